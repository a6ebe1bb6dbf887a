package org.barsheet.notation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * A score with every note where it would be written: swing straightened, and notes played by hand a
 * little early or late put on the division of the beat they were meant for. Parts that lie on their
 * divisions anyway stay as they are to the tick.
 *
 * <p>It is for comparing notes with notes; every time that is told is that of the note played.
 */
public final class WrittenMusic {

  /**
   * So much of a part lies on divisions, to the tick, if it was written and not played: 0 is what
   * chance puts there, 1 is all of it.
   */
  private static final double MOSTLY_EXACT = 0.5;

  /** What divides exact music: 24ths and 32nds of a quarter note. */
  private static final int[] EXACT_DIVISIONS = {24, 32};

  /** From so many ticks to the quarter note on a division may be missed by one. */
  private static final int FINE = 240;

  /** What a tick's rounding may leave after straightening, in quarter notes. */
  private static final double NEAT = 0.005;

  private static final int NEAT_DIVISIONS = 48;

  /** A note's end as near as this many spreads to a sixteenth is meant to lie on it. */
  private static final double NEAR_END = 2.5;

  private static final int ENDS = 4;

  private final Score score;
  private final List<WrittenNote> notes;
  private final Optional<Swing> swing;
  private final boolean onBeats;

  private WrittenMusic(
      Score score, List<WrittenNote> notes, Optional<Swing> swing, boolean onBeats) {
    this.score = score;
    this.notes = notes;
    this.swing = swing;
    this.onBeats = onBeats;
  }

  /** Writes down a score; where notes keep to no beats at all they stay where they are. */
  public static WrittenMusic of(Score score) {
    return new Writing(score).music();
  }

  /** Every note, drums too, in order of where it is written, then part, then pitch. */
  public List<WrittenNote> notes() {
    return notes;
  }

  /** The score as written: its notes at their written ticks. */
  public Score score() {
    return isAsPlayed()
        ? score
        : score.withNotes(notes.stream().map(WrittenNote::written).toList());
  }

  /** Whether nothing was moved. */
  public boolean isAsPlayed() {
    return notes.stream().allMatch(note -> note.written().equals(note.played()));
  }

  /** Whether the notes keep to the beats of the ticks, exactly or by hand. */
  public boolean isOnBeats() {
    return onBeats;
  }

  /** The tick at which it is written what is played at a tick; beats stay where they are. */
  public long written(long playedTick) {
    return moved(playedTick, swing.map(s -> s.written(place(playedTick))));
  }

  /** The tick at which it is played what is written at a tick; beats stay where they are. */
  public long played(long writtenTick) {
    return moved(writtenTick, swing.map(s -> s.played(place(writtenTick))));
  }

  private double place(long tick) {
    return tick / (double) score.ticksPerQuarter();
  }

  private long moved(long tick, Optional<Double> place) {
    return place.map(p -> Math.round(p * score.ticksPerQuarter())).orElse(tick);
  }

  /** The work of writing down one score. */
  private static final class Writing {

    private final Score score;
    private final double quarter;
    private final List<List<Note>> byPart;
    private final Optional<Swing> whole;
    private final BitSet exactTicks;

    Writing(Score score) {
      this.score = score;
      this.quarter = score.ticksPerQuarter();
      this.byPart = score.notesByPart();
      this.whole = Swing.of(places(score.notes()));
      this.exactTicks = exactTicks(score.ticksPerQuarter());
    }

    private double[] places(List<Note> some) {
      return some.stream().mapToDouble(note -> note.onTick() / quarter).toArray();
    }

    WrittenMusic music() {
      List<WrittenNote> written = new ArrayList<>();
      List<Note> byHand = new ArrayList<>();
      for (List<Note> part : byPart) {
        Optional<Swing> swing = swing(part);
        double[] straight = straight(places(part), swing);
        if (isExact(straight)) {
          part.forEach(
              note -> written.add(swing.isEmpty() ? asPlayed(note) : swung(note, swing.get())));
        } else {
          NoteGrid grid = NoteGrid.of(straight);
          part.forEach(note -> written.add(byHand(note, swing, grid)));
          written
              .subList(written.size() - part.size(), written.size())
              .forEach(note -> byHand.add(note.played()));
        }
      }
      if (byHand.isEmpty() && whole.isEmpty()) {
        return asPlayed(true);
      }
      boolean keeps = byHand.isEmpty() || BeatKeeping.of(straight(places(byHand), whole));
      return keeps ? new WrittenMusic(score, inOrder(written), whole, true) : asPlayed(false);
    }

    private WrittenMusic asPlayed(boolean onBeats) {
      List<WrittenNote> same = score.notes().stream().map(Writing::asPlayed).toList();
      return new WrittenMusic(score, same, Optional.empty(), onBeats);
    }

    /** A part's own swing; that of all where it has too few notes to tell. */
    private Optional<Swing> swing(List<Note> part) {
      return whole.isEmpty()
          ? whole
          : Swing.of(places(part))
              .or(() -> Swing.mayShare(places(part)) ? whole : Optional.empty());
    }

    private static double[] straight(double[] places, Optional<Swing> swing) {
      return swing.isEmpty() ? places : DoubleStream.of(places).map(swing.get()::written).toArray();
    }

    private boolean isExact(double[] places) {
      long exact = DoubleStream.of(places).filter(this::isExact).count();
      double chance = exactTicks.cardinality() / quarter;
      return exact - chance * places.length >= MOSTLY_EXACT * (1 - chance) * places.length;
    }

    private boolean isExact(double place) {
      return exactTicks.get(Math.floorMod(tick(place), score.ticksPerQuarter()));
    }

    /** The ticks of a quarter note that lie on a division, give or take one. */
    private static BitSet exactTicks(int ticksPerQuarter) {
      BitSet exact = new BitSet();
      for (int division : EXACT_DIVISIONS) {
        for (int k = 0; k < division; k++) {
          int tick = Math.round((float) k * ticksPerQuarter / division);
          int about = ticksPerQuarter >= FINE ? 1 : 0;
          for (int near = tick - about; near <= tick + about; near++) {
            exact.set(Math.floorMod(near, ticksPerQuarter));
          }
        }
      }
      return exact;
    }

    private static WrittenNote asPlayed(Note note) {
      return new WrittenNote(note, note);
    }

    private WrittenNote swung(Note note, Swing swing) {
      double on = swing.written(note.onTick() / quarter);
      double off = swing.written(note.offTick() / quarter);
      return written(note, tick(neat(on)), tick(neat(off)));
    }

    /** A place whose rounding to a tick was stretched along with the swing, on its division. */
    private static double neat(double place) {
      double near = Math.rint(place * NEAT_DIVISIONS) / NEAT_DIVISIONS;
      return Math.abs(near - place) <= NEAT ? near : place;
    }

    private WrittenNote byHand(Note note, Optional<Swing> swing, NoteGrid grid) {
      double on = note.onTick() / quarter;
      double off = note.offTick() / quarter;
      double meant = grid.meant(swing.isEmpty() ? on : swing.get().written(on));
      double end = swing.isEmpty() ? off : swing.get().written(off);
      double near = Math.rint(end * ENDS) / ENDS;
      boolean isNear = Math.abs(near - end) <= NEAR_END * grid.spread() && near > meant;
      return written(note, tick(meant), tick(isNear ? near : end));
    }

    private long tick(double place) {
      return Math.round(place * quarter);
    }

    private static WrittenNote written(Note note, long on, long off) {
      long start = Math.max(0, on);
      Note written =
          new Note(note.part(), note.pitch(), note.velocity(), start, Math.max(start + 1, off));
      return new WrittenNote(written, note);
    }

    private static List<WrittenNote> inOrder(List<WrittenNote> written) {
      written.sort(
          Comparator.comparing(
                  WrittenNote::written,
                  Comparator.comparingLong(Note::onTick)
                      .thenComparingInt(Note::part)
                      .thenComparingInt(Note::pitch))
              .thenComparingLong(note -> note.played().onTick()));
      return List.copyOf(written);
    }
  }
}

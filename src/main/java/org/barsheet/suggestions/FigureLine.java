package org.barsheet.suggestions;

import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.HeardLine;
import org.barsheet.motif.MotifNote;
import org.barsheet.score.Note;

/** A figure as a line of notes, as a plan may have it. */
final class FigureLine {

  static final int FEWEST_NOTES = 4;

  /** Held notes are written in eighths of a quarter note. */
  private static final int NEAT = 8;

  /** A grace note is shorter than this division of a quarter note. */
  private static final int GRACE = 16;

  private final MelodyLines lines;
  private final int ticksPerQuarter;

  FigureLine(MelodyLines lines, int ticksPerQuarter) {
    this.lines = lines;
    this.ticksPerQuarter = ticksPerQuarter;
  }

  /** The line that a figure plays the first time. */
  List<MotifNote> of(RepeatedFigures.Figure figure) {
    int first = figure.places().get(0);
    List<Note> notes = new ArrayList<>();
    for (int i = first; i <= first + figure.steps(); i++) {
      notes.add(lines.note(i));
    }
    List<Note> plain = notes.stream().filter(note -> !isGrace(note)).collect(toList());
    return new HeardLine(plain.size() < FEWEST_NOTES ? notes : plain, ticksPerQuarter).notes();
  }

  /** Whether a note is too short to be more than an ornament of the next. */
  private boolean isGrace(Note note) {
    return GRACE * note.lengthTicks() < ticksPerQuarter;
  }

  /** A line with the note values that it may have been written in. */
  static List<MotifNote> neat(List<MotifNote> line) {
    return lastWritten(filled(line));
  }

  /** The line with every note but the last held to the end of the eighth of a beat it fills. */
  private static List<MotifNote> filled(List<MotifNote> line) {
    List<MotifNote> filled = new ArrayList<>();
    for (int i = 0; i + 1 < line.size(); i++) {
      filled.add(filled(line.get(i), line.get(i + 1).onset()));
    }
    filled.add(line.get(line.size() - 1));
    return filled;
  }

  private static MotifNote filled(MotifNote note, BigFraction next) {
    double eighths = note.length().doubleValue() * NEAT;
    int whole = (int) Math.ceil(eighths);
    BigFraction length = BigFraction.of(whole, NEAT);
    boolean isFree = note.onset().add(length).compareTo(next) <= 0;
    return isFree && 4 * eighths >= 3 * whole && !isOnThirds(note)
        ? new MotifNote(note.onset(), length, note.pitch())
        : note;
  }

  private static boolean isOnThirds(MotifNote note) {
    return note.length().getDenominator().intValue() % 3 == 0
        && note.length().getDenominator().intValue() <= 12;
  }

  /**
   * The line with its last note as it may have been written: players and programs let a note go a
   * little early, and nothing follows that would tell. At most an eighth is added or taken.
   */
  private static List<MotifNote> lastWritten(List<MotifNote> line) {
    MotifNote last = line.get(line.size() - 1);
    BigFraction sixteenths = last.length().multiply(4);
    BigFraction written = BigFraction.of(Math.round(sixteenths.doubleValue()), 4);
    BigFraction off = written.subtract(last.length()).abs();
    if (off.multiply(8).compareTo(last.length()) > 0) {
      return line;
    }
    List<MotifNote> neat = new ArrayList<>(line.subList(0, line.size() - 1));
    neat.add(new MotifNote(last.onset(), written, last.pitch()));
    return neat;
  }
}

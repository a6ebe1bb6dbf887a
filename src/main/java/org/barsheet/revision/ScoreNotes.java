package org.barsheet.revision;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.SoundedNotes;
import org.barsheet.pulse.Music;
import org.barsheet.score.Bar;
import org.barsheet.score.BarBeat;
import org.barsheet.score.Note;

/**
 * The notes of a version of a score, bar by bar, as far as the next version needs them to be found
 * again: when each begins and how high it is, whatever the file's own ticks.
 *
 * @param bars in the order played, without gaps, at least one
 * @param parts in the order of the score
 */
public record ScoreNotes(List<HeldBar> bars, List<HeldPart> parts) {

  /**
   * Times are counted in so many to the quarter note. Triplets and sixty-fourths fall on whole
   * ones; what lies between is rounded, so that a file written anew on other ticks says the same.
   */
  public static final int UNITS = 48;

  private static final Comparator<BarNote> ORDER =
      Comparator.comparingLong(BarNote::at).thenComparingInt(BarNote::pitch);

  public ScoreNotes {
    bars = List.copyOf(bars);
    parts = List.copyOf(parts);
    for (HeldPart part : parts) {
      if (part.bars().size() != bars.size()) {
        throw new IllegalArgumentException(part.name() + " has other bars than its score");
      }
    }
  }

  /** The notes of a score in the bars that the film follows. */
  public static ScoreNotes of(Music music) {
    int perQuarter = music.score().ticksPerQuarter();
    List<HeldBar> bars = new ArrayList<>();
    for (Bar bar : music.bars().bars()) {
      List<Long> beats = bar.beatTicks().stream().map(tick -> units(tick, perQuarter)).toList();
      bars.add(new HeldBar(bar.number(), bar.time(), beats, units(bar.endTick(), perQuarter)));
    }
    List<HeldPart> parts = new ArrayList<>();
    List<List<Note>> notes = music.score().notesByPart();
    music
        .score()
        .parts()
        .forEach(
            part ->
                parts.add(
                    new HeldPart(
                        part.name(), part.drums(), byBar(music, bars, notes.get(part.index())))));
    return new ScoreNotes(bars, parts);
  }

  private static List<List<BarNote>> byBar(Music music, List<HeldBar> bars, List<Note> notes) {
    List<List<BarNote>> byBar = new ArrayList<>();
    bars.forEach(bar -> byBar.add(new ArrayList<>()));
    for (Note note : notes) {
      int bar = music.bars().barAt(note.onTick()).index();
      long at = units(note.onTick(), music.score().ticksPerQuarter()) - bars.get(bar).start();
      byBar.get(bar).add(new BarNote(at, note.pitch()));
    }
    byBar.forEach(bar -> bar.sort(ORDER));
    return byBar;
  }

  private static long units(long tick, int perQuarter) {
    return Math.floorDiv(2 * tick * UNITS + perQuarter, 2L * perQuarter);
  }

  /** A return of this music. */
  public static HeldReturn held(Occurrence occurrence, Music music) {
    SoundedNotes notes = occurrence.notes();
    List<BarNote> sounding = new ArrayList<>();
    for (int i = 0; i < notes.ticks().size(); i++) {
      if (notes.pitches().get(i) >= 0) {
        long at = units(notes.ticks().get(i), music.score().ticksPerQuarter());
        sounding.add(new BarNote(at, notes.pitches().get(i)));
      }
    }
    List<String> parts =
        occurrence.parts().stream().map(part -> music.score().parts().get(part).name()).toList();
    return new HeldReturn(occurrence.motif(), occurrence.number(), parts, sounding);
  }

  /** Index of the bar in which a time lies: the first for times before it, the last after it. */
  int barAt(BigFraction units) {
    int low = 0;
    int high = bars.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (BigFraction.of(bars.get(middle).start()).compareTo(units) <= 0) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** Index of the bar of a printed number and time round, if there is one. */
  public Optional<Integer> barOf(int number, int time) {
    for (int i = 0; i < bars.size(); i++) {
      if (bars.get(i).number() == number && bars.get(i).time() == time) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** The bar at a printed place, if there is one. */
  public Optional<HeldBar> barAt(BarBeat place) {
    return barOf(place.bar(), place.time()).map(bars::get);
  }

  /** When a printed place is, in quarter notes from tick 0, if there is such a bar. */
  public Optional<BigFraction> quartersOf(BarBeat place) {
    return barAt(place).map(bar -> timeOf(bar, place.beat()).divide(UNITS));
  }

  /**
   * Where a moment lies in bars and beats; between two beats in proportion.
   *
   * @param quarters quarter notes from tick 0
   */
  public BarBeat placeAt(BigFraction quarters) {
    return locate(quarters.multiply(UNITS));
  }

  /** Where a time lies in bars and beats; between two beats in proportion. */
  BarBeat locate(BigFraction units) {
    HeldBar bar = bars.get(barAt(units));
    int beat = bar.beats().size() - 1;
    while (beat > 0 && BigFraction.of(bar.beats().get(beat)).compareTo(units) > 0) {
      beat--;
    }
    BigFraction into = units.subtract(bar.beats().get(beat));
    BigFraction past = into.signum() < 0 ? BigFraction.ZERO : into;
    BigFraction share = past.divide(BigFraction.of(Math.max(1, beatLength(bar, beat))));
    return new BarBeat(bar.number(), bar.time(), share.add(beat + 1));
  }

  /** When a place of a bar is, in units from tick 0; beats past its last run on. */
  BigFraction timeOf(HeldBar bar, BigFraction beat) {
    BigInteger floor = beat.getNumerator().divide(beat.getDenominator());
    int whole = Math.min(floor.intValueExact(), bar.beats().size());
    return beat.subtract(whole)
        .multiply(BigFraction.of(beatLength(bar, whole - 1)))
        .add(bar.beats().get(whole - 1));
  }

  private static long beatLength(HeldBar bar, int beat) {
    boolean last = beat + 1 == bar.beats().size();
    return (last ? bar.end() : bar.beats().get(beat + 1)) - bar.beats().get(beat);
  }
}

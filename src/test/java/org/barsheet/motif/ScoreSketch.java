package org.barsheet.motif;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Division;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/** A score written in note grammar: common time, a quarter note lasts half a second. */
public final class ScoreSketch {

  public static final int TICKS_PER_QUARTER = 480;
  private static final int BAR = 4 * TICKS_PER_QUARTER;

  private final List<Part> parts = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();

  /** Adds a part; the notes that follow are its own. */
  public ScoreSketch part(String name) {
    parts.add(new Part(parts.size(), name, "", parts.size(), 1, false));
    return this;
  }

  public ScoreSketch drums(String name) {
    parts.add(new Part(parts.size(), name, "Drums", parts.size(), 10, true));
    return this;
  }

  /** Writes a line of notes into the last part from the first beat of a bar. */
  public ScoreSketch bar(int bar, String line) {
    return at(4L * (bar - 1), Notes.parse(line));
  }

  /** Writes a line of notes into the last part so many eighth notes after a bar's beginning. */
  public ScoreSketch after(int bar, int eighths, String line) {
    List<MotifNote> moved = new ArrayList<>();
    for (MotifNote note : Notes.parse(line)) {
      BigFraction onset = note.onset().add(BigFraction.of(eighths, 2));
      moved.add(new MotifNote(onset, note.length(), note.pitch()));
    }
    return at(4L * (bar - 1), moved);
  }

  /** Writes notes into the last part from a quarter note, counted from 0. */
  public ScoreSketch at(long quarter, List<MotifNote> line) {
    for (MotifNote note : line) {
      long on = ticks(note.onset().add(quarter));
      long off = Math.max(on + 1, ticks(note.onset().add(quarter).add(note.length())));
      note(note.pitch(), on, off);
    }
    return this;
  }

  public ScoreSketch note(int pitch, long onTick, long offTick) {
    notes.add(new Note(parts.size() - 1, pitch, 80, onTick, offTick));
    return this;
  }

  private static long ticks(BigFraction quarters) {
    BigFraction doubled = quarters.multiply(2 * TICKS_PER_QUARTER).add(1);
    return doubled
        .getNumerator()
        .divide(doubled.getDenominator().multiply(BigInteger.TWO))
        .longValueExact();
  }

  public Score score() {
    notes.sort(
        Comparator.comparingLong(Note::onTick)
            .thenComparingInt(Note::part)
            .thenComparingInt(Note::pitch));
    long end = notes.stream().mapToLong(Note::offTick).max().orElse(1);
    TempoMap tempo =
        TempoMap.of(TICKS_PER_QUARTER, List.of(new TempoMap.Change(0, Seconds.of(1, 2))));
    return new Score(
        1,
        new Division.PerQuarter(TICKS_PER_QUARTER),
        TICKS_PER_QUARTER,
        parts,
        notes,
        List.of(),
        List.of(),
        tempo,
        1,
        1,
        bars(end),
        end,
        List.of());
  }

  private static BarGrid bars(long end) {
    List<Bar> bars = new ArrayList<>();
    for (long start = 0; start < end; start += BAR) {
      List<Long> beats = new ArrayList<>();
      for (int beat = 0; beat < 4; beat++) {
        beats.add(start + beat * (long) TICKS_PER_QUARTER);
      }
      int index = bars.size();
      bars.add(new Bar(index, index + 1, 1, Meter.COMMON, start, start + BAR, beats));
    }
    return new BarGrid(bars);
  }
}

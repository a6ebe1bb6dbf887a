package org.barsheet.outside;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongToDoubleFunction;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Division;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/** Takes a score down as a recorder does that knows no tempo: at 120, in bars of 4/4. */
final class Recorder {

  private static final int TICKS_PER_QUARTER = 480;
  private static final int BAR = 4 * TICKS_PER_QUARTER;
  private static final int TICKS_PER_SECOND = 2 * TICKS_PER_QUARTER;

  private Recorder() {}

  /**
   * The score as it was played.
   *
   * @param onset when a note that begins on a tick is struck, in seconds
   * @param release when a note that ends on a tick is let go, in seconds
   */
  static Score record(Score score, LongToDoubleFunction onset, LongToDoubleFunction release) {
    List<Note> notes = new ArrayList<>();
    for (Note note : score.notes()) {
      long on = Math.max(0, Math.round(onset.applyAsDouble(note.onTick()) * TICKS_PER_SECOND));
      long off = Math.round(release.applyAsDouble(note.offTick()) * TICKS_PER_SECOND);
      notes.add(new Note(note.part(), note.pitch(), note.velocity(), on, Math.max(on + 1, off)));
    }
    notes.sort(
        Comparator.comparingLong(Note::onTick)
            .thenComparingInt(Note::part)
            .thenComparingInt(Note::pitch));
    long end = notes.stream().mapToLong(Note::offTick).max().orElseThrow();
    return new Score(
        1,
        new Division.PerQuarter(TICKS_PER_QUARTER),
        TICKS_PER_QUARTER,
        score.parts(),
        notes,
        List.of(),
        List.of(),
        TempoMap.of(TICKS_PER_QUARTER, List.of(new TempoMap.Change(0, Seconds.of(1, 2)))),
        1,
        0,
        new BarGrid(bars(end)),
        end,
        List.of());
  }

  private static List<Bar> bars(long end) {
    List<Bar> bars = new ArrayList<>();
    for (long start = 0; start < end; start += BAR) {
      bars.add(Bar.counted(bars.size(), Meter.COMMON, start, start + BAR, TICKS_PER_QUARTER));
    }
    return bars;
  }
}

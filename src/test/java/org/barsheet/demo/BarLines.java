package org.barsheet.demo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.demo.Music.Meter;

/**
 * The bars of the demo score: a pickup of one quarter (bar 0), then bars of whole quarters. A beat
 * is a quarter.
 */
final class BarLines {

  private final List<Long> starts = new ArrayList<>();
  private final List<Meter> meters = new ArrayList<>();
  private long end;

  /** Appends bars of so many quarters; a change of meter is written where they differ. */
  BarLines then(int count, int quarters) {
    if (meters.isEmpty() || meters.get(meters.size() - 1).beats() != quarters) {
      meters.add(new Meter(end, quarters, 4));
    }
    for (int bar = 0; bar < count; bar++) {
      starts.add(end);
      end += (long) quarters * ScoreFile.TICKS_PER_QUARTER;
    }
    return this;
  }

  /** A place in the bars. The beat counts quarters from 1 and may be a fraction. */
  record BarPlace(int bar, BigDecimal beat) {}

  /** The number of the last bar. */
  int lastBar() {
    return starts.size() - 1;
  }

  /** The first tick of a bar, or the end of the last one. */
  long startOf(int bar) {
    return bar == starts.size() ? end : starts.get(bar);
  }

  long startOf(int bar, int beat) {
    return startOf(bar) + (long) (beat - 1) * ScoreFile.TICKS_PER_QUARTER;
  }

  boolean isBarLine(long tick) {
    return tick == end || starts.contains(tick);
  }

  BarPlace placeOf(long tick) {
    int bar = lastBar();
    while (starts.get(bar) > tick) {
      bar--;
    }
    BigDecimal quarters =
        BigDecimal.valueOf(tick - starts.get(bar))
            .divide(BigDecimal.valueOf(ScoreFile.TICKS_PER_QUARTER));
    return new BarPlace(bar, quarters.add(BigDecimal.ONE));
  }

  List<Meter> meters() {
    return List.copyOf(meters);
  }
}

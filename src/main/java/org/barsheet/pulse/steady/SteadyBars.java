package org.barsheet.pulse.steady;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.steady.MeterSearch.FoundBar;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Score;

/**
 * Turns a steady reading into bars: beats lie on the pulse itself, exactly on a note where one is
 * meant there.
 */
public final class SteadyBars {

  /** A note this near a beat of an exact pulse is on it, in seconds. */
  private static final double SAME_SECONDS = 0.0025;

  private static final long NANOS = 1_000_000_000;

  private final Score score;
  private final Playing playing;
  private final boolean exact;

  private SteadyBars(Score score, Playing playing, boolean exact) {
    this.exact = exact;
    this.score = score;
    this.playing = playing;
  }

  /** The bars of a reading, from the one in which the first note begins to the last note's end. */
  public static BarGrid grid(Score score, Playing playing, SteadyReading reading) {
    return new SteadyBars(score, playing, reading.isExact()).grid(reading);
  }

  private BarGrid grid(SteadyReading reading) {
    List<Bar> bars = new ArrayList<>();
    for (FoundBar found : reading.bars()) {
      add(bars, found, reading.beats(found), tick(reading.end(found)));
    }
    FoundBar last = reading.bars().get(reading.bars().size() - 1);
    double length = reading.end(last) - reading.beats(last).get(0);
    for (int more = 1; bars.get(bars.size() - 1).endTick() < score.endTick(); more++) {
      double later = more * length;
      List<Double> beats = reading.beats(last).stream().map(beat -> beat + later).toList();
      add(bars, last, beats, tick(reading.end(last) + later));
    }
    return new BarGrid(bars);
  }

  /** A first bar that would begin before the file does is a pickup, numbered 0. */
  private void add(List<Bar> bars, FoundBar found, List<Double> beats, long end) {
    List<Long> ticks = new ArrayList<>();
    for (double beat : beats) {
      long tick = tick(beat);
      if (tick >= 0) {
        ticks.add(tick);
      }
    }
    boolean cut = ticks.size() < beats.size();
    if (cut && bars.isEmpty() && (ticks.isEmpty() || soundsBefore(ticks.get(0)))) {
      ticks.add(0, 0L);
    }
    int number = bars.isEmpty() ? (cut ? 0 : 1) : bars.get(bars.size() - 1).number() + 1;
    bars.add(
        new Bar(
            bars.size(), number, 1, found.meter().meter(), ticks.get(0), end, ticks, beats.size()));
  }

  private boolean soundsBefore(long tick) {
    return playing.strokes().get(0).tick() < tick;
  }

  private long tick(double seconds) {
    Playing.Stroke stroke = playing.nearest(seconds);
    if (exact && Math.abs(stroke.seconds() - seconds) <= SAME_SECONDS) {
      return stroke.tick();
    }
    Seconds rounded = Seconds.of(Math.round(seconds * NANOS), NANOS);
    return Math.round(score.tempo().tickAt(rounded).doubleValue());
  }
}

package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.TempoRequest.Pin;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.TempoMap;

/**
 * Found bars held against pins: where bars begin at all pinned times already, in the number the
 * pins say, only the last milliseconds are theirs to correct.
 */
final class PinnedBars {

  /** A bar that begins this near a pin is the pinned one. */
  private static final double NEAR_SECONDS = 0.07;

  /** And this near where it is the only one, which may be the time of a recording as well. */
  private static final double ALONE_SECONDS = 0.008;

  private PinnedBars() {}

  /**
   * Whether bars begin at all pins, as many bars apart as these are.
   *
   * @param pins in order
   */
  static boolean agree(BarGrid bars, TempoMap tempo, List<Pin> pins) {
    int first = pins.isEmpty() ? 0 : nearest(bars, tempo, pins.get(0)).index() - pins.get(0).bar();
    return pins.stream()
        .allMatch(
            pin ->
                begins(bars, tempo, pin, pins.size() == 1 ? ALONE_SECONDS : NEAR_SECONDS)
                    && nearest(bars, tempo, pin).index() - pin.bar() == first);
  }

  private static boolean begins(BarGrid bars, TempoMap tempo, Pin pin, double near) {
    Seconds start = tempo.secondsAt(nearest(bars, tempo, pin).startTick());
    return Math.abs(start.minus(pin.at()).toDouble()) <= near;
  }

  /** The bar that begins nearest to a pin. */
  static Bar nearest(BarGrid bars, TempoMap tempo, Pin pin) {
    long tick = tick(tempo, pin);
    Bar before = bars.barAt(tick);
    int next = before.index() + 1;
    boolean later =
        next < bars.bars().size() && before.endTick() - tick < tick - before.startTick();
    return later ? bars.bars().get(next) : before;
  }

  private static long tick(TempoMap tempo, Pin pin) {
    return Math.round(tempo.tickAt(pin.at()).doubleValue());
  }

  /**
   * Bars that agree with pins, begun exactly at them; what they are moved by changes steadily from
   * one pin to the next.
   */
  static BarGrid onPins(BarGrid bars, TempoMap tempo, List<Pin> pins) {
    List<long[]> moves = new ArrayList<>();
    for (Pin pin : pins) {
      long start = nearest(bars, tempo, pin).startTick();
      moves.add(new long[] {start, tick(tempo, pin) - start});
    }
    List<Bar> moved = new ArrayList<>();
    for (Bar bar : bars.bars()) {
      List<Long> beats = bar.beatTicks().stream().map(beat -> moved(beat, moves)).toList();
      moved.add(
          new Bar(
              bar.index(),
              bar.number(),
              bar.time(),
              bar.meter(),
              beats.get(0),
              moved(bar.endTick(), moves),
              beats,
              bar.fullBeats()));
    }
    return new BarGrid(moved);
  }

  private static long moved(long tick, List<long[]> moves) {
    long[] before = moves.get(0);
    for (long[] move : moves) {
      if (move[0] > tick) {
        double share =
            move[0] == before[0] ? 0 : (double) (tick - before[0]) / (move[0] - before[0]);
        double by = before[1] + Math.max(0, share) * (move[1] - before[1]);
        return Math.max(0, tick + Math.round(by));
      }
      before = move;
    }
    return Math.max(0, tick + before[1]);
  }
}

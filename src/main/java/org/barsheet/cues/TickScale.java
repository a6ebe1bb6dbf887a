package org.barsheet.cues;

import java.util.Arrays;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A row of ticks (bar lines, or beats) as a scale: the first is 0, the second 1, and what lies
 * between two is in proportion. Before the first and after the last the scale runs on at the length
 * of its first and last step.
 */
final class TickScale {

  private final long[] ticks;

  /** A scale of at least two ticks, each more than the one before. */
  TickScale(long[] ticks) {
    if (ticks.length < 2) {
      throw new IllegalArgumentException("a scale has at least one step");
    }
    this.ticks = ticks.clone();
  }

  /** Where a tick, possibly a fraction, lies on the scale. */
  BigFraction position(BigFraction tick) {
    int step = stepAt(floor(tick));
    return tick.subtract(ticks[step]).divide(ticks[step + 1] - ticks[step]).add(step);
  }

  /** The tick, possibly a fraction, at a position of the scale. */
  BigFraction tickAt(BigFraction position) {
    int step = (int) Math.max(0, Math.min(floor(position), ticks.length - 2L));
    return position.subtract(step).multiply(ticks[step + 1] - ticks[step]).add(ticks[step]);
  }

  private int stepAt(long tick) {
    int found = Arrays.binarySearch(ticks, tick);
    int step = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(step, ticks.length - 2));
  }

  private static long floor(BigFraction number) {
    var parts = number.getNumerator().divideAndRemainder(number.getDenominator());
    return parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
  }
}

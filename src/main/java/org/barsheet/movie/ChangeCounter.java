package org.barsheet.movie;

import org.barsheet.clock.FrameRate;

/** Counts how often a value turns back by a threshold or more. */
final class ChangeCounter {

  /** Changes kept: one more than four flashes. */
  private static final int KEPT = 9;

  private final double threshold;
  private final long[] frames = new long[KEPT];
  private int count;
  private boolean begun;
  private double lowest;
  private double highest;

  /** The limits that came with the lowest value and with the highest. */
  private double lowestLimit;

  private double highestLimit;

  /** 1 after a rise, -1 after a fall. */
  private int direction;

  ChangeCounter(double threshold) {
    this.threshold = threshold;
  }

  /**
   * The next value.
   *
   * @param limit a change counts where the lower one of its states is below this, for either of
   *     them
   */
  void look(double value, double limit, long frame) {
    if (!begun) {
      begun = true;
      low(value, limit);
      high(value, limit);
      return;
    }
    if (direction <= 0 && value - lowest >= threshold && counts(lowest, lowestLimit, limit)) {
      turn(1, frame);
      high(value, limit);
    } else if (direction >= 0
        && highest - value >= threshold
        && counts(value, highestLimit, limit)) {
      turn(-1, frame);
      low(value, limit);
    }
    if (value > highest && direction >= 0) {
      high(value, limit);
    }
    if (value < lowest && direction <= 0) {
      low(value, limit);
    }
  }

  private static boolean counts(double lower, double one, double other) {
    return lower < Math.max(one, other);
  }

  private void low(double value, double limit) {
    lowest = value;
    lowestLimit = limit;
  }

  private void high(double value, double limit) {
    highest = value;
    highestLimit = limit;
  }

  private void turn(int way, long frame) {
    direction = way;
    frames[count % KEPT] = frame;
    count++;
  }

  /** Pairs of opposing changes within the second that ends with a frame, 0 to 4. */
  int flashesInSecondTo(long frame, FrameRate rate) {
    int changes = 0;
    for (int back = 1; back <= Math.min(count, KEPT); back++) {
      long since = frame - frames[(count - back) % KEPT];
      if (since * rate.denominator() > rate.numerator()) {
        break;
      }
      changes++;
    }
    return Math.min(changes, 2 * (FlashMeter.ALLOWED + 1)) / 2;
  }
}

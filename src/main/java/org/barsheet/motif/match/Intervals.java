package org.barsheet.motif.match;

/** Intervals between pitches in scale steps. */
public final class Intervals {

  /** The scale steps that 0 to 11 semitones may be: as a rule one, for 6 and 8 either of two. */
  private static final int[][] STEPS = {
    {0}, {1}, {1}, {2}, {2}, {3}, {3, 4}, {4}, {5, 4}, {5}, {6}, {6}
  };

  private Intervals() {}

  /** Least number of scale steps by which two intervals, each in semitones, differ. */
  public static int stepsApart(int interval, int other) {
    int least = Integer.MAX_VALUE;
    for (int step : STEPS[Math.abs(interval) % 12]) {
      for (int otherStep : STEPS[Math.abs(other) % 12]) {
        int apart = signed(interval, step) - signed(other, otherStep);
        least = Math.min(least, Math.abs(apart));
      }
    }
    return least;
  }

  private static int signed(int interval, int step) {
    return Integer.signum(interval) * (step + 7 * (Math.abs(interval) / 12));
  }
}

package org.barsheet.pulse.evidence;

/** How far values stand out among their neighbors, in standard deviations. */
final class Standing {

  private static final double MOST = 2.5;
  private static final double NO_SPREAD = 1e-9;

  private Standing() {}

  /**
   * How far one value stands out, at most 2.5 standard deviations either way.
   *
   * @param from first neighbor
   * @param to after the last neighbor
   */
  static double of(double[] values, int index, int from, int to) {
    double sum = 0;
    double squares = 0;
    for (int i = from; i < to; i++) {
      sum += values[i];
    }
    double mean = sum / (to - from);
    for (int i = from; i < to; i++) {
      squares += (values[i] - mean) * (values[i] - mean);
    }
    double spread = Math.sqrt(squares / (to - from));
    return spread < NO_SPREAD
        ? 0
        : Math.max(-MOST, Math.min(MOST, (values[index] - mean) / spread));
  }
}

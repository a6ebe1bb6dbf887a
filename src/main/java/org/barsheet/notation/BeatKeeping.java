package org.barsheet.notation;

/** Tells notes played by hand over true beats from notes whose beats mean nothing. */
final class BeatKeeping {

  /** Looked at by themselves, in quarter notes. */
  private static final int STRETCH = 32;

  private static final int FEWEST = 8;

  /**
   * How closely a stretch keeps to sixteenths or triplets, 0 by chance and 1 exactly: the mean
   * cosine of its onsets. 0.35 is what a spread of 0.058 quarter notes leaves.
   */
  private static final double KEPT = 0.35;

  /** What share of the notes lies in stretches that keep. */
  private static final double MOSTLY = 0.8;

  private static final int[] DIVISIONS = {4, 3, 2};

  private BeatKeeping() {}

  /** Whether onsets, in quarter notes and in any order, keep to the beats. */
  static boolean of(double[] places) {
    double last = 0;
    for (double place : places) {
      last = Math.max(last, place);
    }
    int stretches = (int) (last / STRETCH) + 1;
    double[][] sums = new double[stretches][DIVISIONS.length];
    int[] counts = new int[stretches];
    for (double place : places) {
      int stretch = (int) (place / STRETCH);
      counts[stretch]++;
      for (int d = 0; d < DIVISIONS.length; d++) {
        sums[stretch][d] += Math.cos(2 * Math.PI * DIVISIONS[d] * place);
      }
    }
    return keeps(sums, counts);
  }

  private static boolean keeps(double[][] sums, int[] counts) {
    int kept = 0;
    int all = 0;
    for (int stretch = 0; stretch < counts.length; stretch++) {
      if (counts[stretch] >= FEWEST) {
        all += counts[stretch];
        double best = Math.max(Math.max(sums[stretch][0], sums[stretch][1]), sums[stretch][2]);
        kept += best >= KEPT * counts[stretch] ? counts[stretch] : 0;
      }
    }
    return kept >= MOSTLY * all;
  }
}

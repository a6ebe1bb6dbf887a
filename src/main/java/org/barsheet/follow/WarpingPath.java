package org.barsheet.follow;

import java.util.Arrays;

/**
 * Dynamic time warping within a band (M. Müller, Fundamentals of Music Processing, 3.2): the
 * cheapest way through two rows of frames, one after the other. The recording may begin before the
 * score and end after it, at a price a frame.
 */
final class WarpingPath {

  private static final double SIDE_WEIGHT = 1.5;
  private static final double DIAGONAL_WEIGHT = 2;

  /** Price of each step aside: where little is heard the tempo stays. */
  private static final double BEND = 0.3;

  /** What frames of the two have of each other: 0 for alike. */
  interface Cost {
    double of(int score, int recording);
  }

  private final double[] recordingFrame;
  private final double cost;

  private WarpingPath(double[] recordingFrame, double cost) {
    this.recordingFrame = recordingFrame;
    this.cost = cost;
  }

  /**
   * The cheapest path.
   *
   * @param low first frame of the recording allowed for each of the score's, never falling
   * @param high last one
   * @param outside price of a frame of the recording before or after the score
   */
  static WarpingPath of(int[] low, int[] high, double outside, Cost cost) {
    int rows = low.length;
    byte[][] steps = new byte[rows][];
    double[] before = new double[0];
    for (int i = 0; i < rows; i++) {
      int width = high[i] - low[i] + 1;
      double[] now = new double[width];
      steps[i] = new byte[width];
      for (int j = 0; j < width; j++) {
        int column = low[i] + j;
        double here = cost.of(i, column);
        double best = i == 0 ? outside * column + here : Double.POSITIVE_INFINITY;
        byte step = 0;
        if (j > 0 && now[j - 1] + SIDE_WEIGHT * here + BEND < best) {
          best = now[j - 1] + SIDE_WEIGHT * here + BEND;
          step = 1;
        }
        if (i > 0) {
          int up = column - low[i - 1];
          if (up < before.length && before[up] + SIDE_WEIGHT * here + BEND < best) {
            best = before[up] + SIDE_WEIGHT * here + BEND;
            step = 2;
          }
          if (up > 0 && up - 1 < before.length && before[up - 1] + DIAGONAL_WEIGHT * here < best) {
            best = before[up - 1] + DIAGONAL_WEIGHT * here;
            step = 3;
          }
        }
        now[j] = best;
        steps[i][j] = step;
      }
      before = now;
    }
    return traced(low, high, outside, steps, before);
  }

  private static WarpingPath traced(
      int[] low, int[] high, double outside, byte[][] steps, double[] last) {
    int i = low.length - 1;
    int j = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < last.length; k++) {
      double whole = last[k] + outside * (high[i] - low[i] - k);
      if (whole < least) {
        least = whole;
        j = k;
      }
    }
    double[] sum = new double[low.length];
    int[] count = new int[low.length];
    int column = low[i] + j;
    while (true) {
      sum[i] += column;
      count[i]++;
      byte step = steps[i][column - low[i]];
      if (step == 0) {
        break;
      }
      i -= step == 1 ? 0 : 1;
      column -= step == 2 ? 0 : 1;
    }
    double[] frame = new double[low.length];
    Arrays.setAll(frame, k -> count[k] == 0 ? Double.NaN : sum[k] / count[k]);
    return new WarpingPath(frame, least / low.length);
  }

  /** The recording's frame for each of the score's: the mean where there are several. */
  double[] recordingFrames() {
    return recordingFrame;
  }

  /** The price of the whole path for each frame of the score. */
  double cost() {
    return cost;
  }
}

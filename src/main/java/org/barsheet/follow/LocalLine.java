package org.barsheet.follow;

import java.util.List;

/**
 * Smooths times of onsets: each is put on a straight line through its neighbors, of which the near
 * ones and those clearly heard count most and outliers least (W. S. Cleveland, "Robust locally
 * weighted regression and smoothing scatterplots", JASA 74, 1979).
 */
final class LocalLine {

  private static final int ROUNDS = 4;
  private static final double REACH = 2.5;

  /** Times this far off a line count half, in seconds. */
  private static final double OFF = 0.012;

  private final List<ScoreOnset> onsets;
  private final double[] times;
  private final double[] weights;
  private final int[] segments;

  /**
   * Times to be smoothed.
   *
   * @param segments runs of onsets that know nothing of each other
   */
  LocalLine(List<ScoreOnset> onsets, double[] times, double[] weights, int[] segments) {
    this.onsets = onsets;
    this.times = times;
    this.weights = weights;
    this.segments = segments;
  }

  /** All times, smoothed over some seconds on each side. */
  double[] smoothed(double width) {
    double[] line = new double[times.length];
    int low = 0;
    int high = 0;
    for (int i = 0; i < times.length; i++) {
      double at = onsets.get(i).seconds();
      while (onsets.get(low).seconds() < at - REACH * width || segments[low] != segments[i]) {
        low++;
      }
      high = Math.max(high, i);
      while (high + 1 < times.length
          && segments[high + 1] == segments[i]
          && onsets.get(high + 1).seconds() <= at + REACH * width) {
        high++;
      }
      line[i] = at(i, low, high, width);
    }
    return line;
  }

  private double at(int place, int low, int high, double width) {
    double level = times[place];
    double slope = 1;
    for (int round = 0; round < ROUNDS; round++) {
      double sum = 1e-9;
      double x1 = 0;
      double y1 = 0;
      double x2 = 0;
      double xy = 0;
      for (int i = low; i <= high; i++) {
        double x = onsets.get(i).seconds() - onsets.get(place).seconds();
        double off = round == 0 ? 0 : (times[i] - level - slope * x) / OFF;
        double near = StrictMath.exp(-x * x / (2 * width * width));
        double weight = weights[i] * near / (1 + off * off);
        sum += weight;
        x1 += weight * x;
        y1 += weight * times[i];
        x2 += weight * x * x;
        xy += weight * x * times[i];
      }
      double spread = sum * x2 - x1 * x1;
      if (spread < 1e-6 * sum * sum) {
        return y1 / sum;
      }
      slope = (sum * xy - x1 * y1) / spread;
      level = (y1 - slope * x1) / sum;
    }
    return level;
  }
}

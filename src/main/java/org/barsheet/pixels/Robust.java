package org.barsheet.pixels;

import java.util.Arrays;
import java.util.List;

/** Statistics that a few wrong values do not move. */
public final class Robust {

  /** Of a normal distribution's standard deviation to its median absolute deviation. */
  private static final double NORMAL = 1.4826;

  private Robust() {}

  /** The median of at least one value; of an even number the mean of the middle two. */
  public static double median(double... values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  /** The same of values in a list. */
  static double median(List<Double> values) {
    return median(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** What the standard deviation would be, were it not for those values: 1.4826 × MAD. */
  public static double spread(double... values) {
    double middle = median(values);
    return NORMAL * median(Arrays.stream(values).map(value -> Math.abs(value - middle)).toArray());
  }

  /**
   * The slope of a line through values one apart: the median of all slopes between two (Theil–Sen).
   */
  public static double slope(double... values) {
    int count = values.length;
    if (count < 2) {
      return 0;
    }
    double[] slopes = new double[count * (count - 1) / 2];
    int next = 0;
    for (int one = 0; one < count; one++) {
      for (int other = one + 1; other < count; other++) {
        slopes[next++] = (values[other] - values[one]) / (other - one);
      }
    }
    return median(slopes);
  }
}

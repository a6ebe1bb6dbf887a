package org.barsheet.recording;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/** How alike two rows of onsets are at every lag, all bands together. */
final class Correlation {

  /** Frames over which it is blurred on each side, so that drift and loose playing count. */
  private static final int BLUR = 8;

  private final double[] at;
  private final int earliest;
  private final int latest;

  private Correlation(double[] at, int earliest, int latest) {
    this.at = at;
    this.earliest = earliest;
    this.latest = latest;
  }

  /**
   * The correlation at every lag at which the two overlap by a third of the shorter one or more;
   * lag n puts frame 0 of {@code moved} on frame n of {@code fixed}.
   */
  static Correlation of(float[][] moved, float[][] fixed) {
    int overlap = Math.min(moved[0].length, fixed[0].length) / 3;
    int earliest = overlap - moved[0].length;
    int latest = fixed[0].length - overlap;
    int size = Integer.highestOneBit(moved[0].length + fixed[0].length) << 1;
    double[][] product = new double[2][size];
    for (int band = 0; band < moved.length; band++) {
      addProduct(product, moved[band], fixed[band], size);
    }
    FastFourierTransformer.transformInPlace(
        product, DftNormalization.STANDARD, TransformType.INVERSE);
    double[] at = new double[latest - earliest + 1];
    for (int lag = earliest; lag <= latest; lag++) {
      at[lag - earliest] = product[0][Math.floorMod(lag, size)];
    }
    return new Correlation(blurred(at), earliest, latest);
  }

  /** Both rows in one transform, one as its real and one as its imaginary part. */
  private static void addProduct(double[][] product, float[] moved, float[] fixed, int size) {
    double[][] both = new double[2][size];
    for (int i = 0; i < moved.length; i++) {
      both[0][i] = moved[i];
    }
    for (int i = 0; i < fixed.length; i++) {
      both[1][i] = fixed[i];
    }
    FastFourierTransformer.transformInPlace(both, DftNormalization.STANDARD, TransformType.FORWARD);
    for (int k = 0; k < size; k++) {
      int mirror = k == 0 ? 0 : size - k;
      double movedRe = 0.5 * (both[0][k] + both[0][mirror]);
      double movedIm = 0.5 * (both[1][k] - both[1][mirror]);
      double fixedRe = 0.5 * (both[1][k] + both[1][mirror]);
      double fixedIm = 0.5 * (both[0][mirror] - both[0][k]);
      product[0][k] += movedRe * fixedRe + movedIm * fixedIm;
      product[1][k] += movedRe * fixedIm - movedIm * fixedRe;
    }
  }

  private static double[] blurred(double[] row) {
    double[] blurred = new double[row.length];
    for (int i = 0; i < row.length; i++) {
      for (int d = Math.max(-BLUR, -i); d <= Math.min(BLUR, row.length - 1 - i); d++) {
        blurred[i] += row[i + d] * (BLUR + 1 - Math.abs(d)) / ((BLUR + 1.0) * (BLUR + 1));
      }
    }
    return blurred;
  }

  /** The lags at which it is strongest, the strongest first. */
  List<Integer> peaks(int most, int apart) {
    List<Integer> peaks = new ArrayList<>();
    boolean[] taken = new boolean[at.length];
    while (peaks.size() < most) {
      int best = -1;
      for (int i = 0; i < at.length; i++) {
        best = !taken[i] && (best < 0 || at[i] > at[best]) ? i : best;
      }
      if (best < 0) {
        return peaks;
      }
      peaks.add(best + earliest);
      for (int i = Math.max(0, best - apart); i < Math.min(at.length, best + apart + 1); i++) {
        taken[i] = true;
      }
    }
    return peaks;
  }

  /** How many standard deviations of all lags the strongest near one lies above their mean. */
  double height(int lag) {
    double mean = 0;
    double square = 0;
    for (double value : at) {
      mean += value / at.length;
      square += value * value / at.length;
    }
    double deviation = StrictMath.sqrt(Math.max(1e-30, square - mean * mean));
    int middle = Math.max(earliest, Math.min(latest, lag)) - earliest;
    double most = at[middle];
    for (int i = Math.max(0, middle - BLUR); i <= Math.min(at.length - 1, middle + BLUR); i++) {
      most = Math.max(most, at[i]);
    }
    return (most - mean) / deviation;
  }
}

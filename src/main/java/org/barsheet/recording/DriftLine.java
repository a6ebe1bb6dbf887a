package org.barsheet.recording;

/**
 * A start and a drift.
 *
 * @param start frame of the other on which frame 0 lies
 * @param slope how much slower the clock ran, as a part of 1
 * @param strength how well the onsets agree along it
 */
record DriftLine(double start, double slope, double strength) {

  /** Frames of a window: 8 s. */
  private static final int WINDOW = 8 * OnsetBands.RATE;

  /** Clocks drift less. */
  private static final double MOST_SLOPE = 600e-6;

  private static final double COARSE_SLOPE = 20e-6;
  private static final double FINE_SLOPE = 2e-6;

  /** Frames to look on each side beyond what drift explains. */
  private static final int AROUND = 12;

  /** Frames over which agreement is blurred on each side: people play that loosely. */
  private static final int BLUR = 4;

  /** The strongest line near a lag. */
  static DriftLine near(int lag, float[][] clip, float[][] other) {
    int windows = Math.max(1, clip[0].length / WINDOW);
    int reach = AROUND + (int) (clip[0].length * MOST_SLOPE / 2) + 1;
    float[][] agreement = new float[windows][];
    for (int i = 0; i < windows; i++) {
      agreement[i] = agreement(clip, other, i * WINDOW, lag, reach + 2 + BLUR);
    }
    double middle = windows * WINDOW / 2.0;
    DriftLine coarse = new DriftLine(0, 0, Double.NEGATIVE_INFINITY);
    for (double slope = -MOST_SLOPE; slope <= MOST_SLOPE; slope += COARSE_SLOPE) {
      coarse = better(coarse, slope, -AROUND, AROUND, 1, agreement, middle);
    }
    DriftLine fine = coarse;
    for (double s = coarse.slope - COARSE_SLOPE;
        s <= coarse.slope + COARSE_SLOPE;
        s += FINE_SLOPE) {
      fine = better(fine, s, coarse.start - 1, coarse.start + 1, 0.1, agreement, middle);
    }
    return new DriftLine(lag + fine.start - fine.slope * middle, fine.slope, fine.strength);
  }

  /**
   * Of two lines that agree as well, clocks are more likely to keep to the one that drifts less.
   */
  private static DriftLine better(
      DriftLine best,
      double slope,
      double from,
      double to,
      double step,
      float[][] agreement,
      double middle) {
    DriftLine better = best;
    int steps = (int) Math.round((to - from) / step);
    for (int i = 0; i <= steps; i++) {
      double offset = from + i * step;
      double strength = 0;
      for (int w = 0; w < agreement.length; w++) {
        strength += read(agreement[w], offset + slope * ((w + 0.5) * WINDOW - middle));
      }
      strength *= 1 - 0.5 * (slope / MOST_SLOPE) * (slope / MOST_SLOPE);
      if (strength > better.strength) {
        better = new DriftLine(offset, slope, strength);
      }
    }
    return better;
  }

  /** The agreement at a fraction of a frame: a parabola through the three nearest. */
  private static double read(float[] row, double lag) {
    int middle = row.length / 2;
    double place = lag + middle;
    int near = (int) Math.max(1, Math.min(row.length - 2, Math.round(place)));
    double d = place - near;
    double slope = (row[near + 1] - row[near - 1]) / 2;
    double bend = (row[near + 1] + row[near - 1]) / 2 - row[near];
    return row[near] + d * slope + d * d * bend;
  }

  /** The correlation of one window at every lag near one, blurred. */
  private static float[] agreement(float[][] clip, float[][] other, int from, int lag, int reach) {
    int to = Math.min(clip[0].length, from + WINDOW);
    float[] sharp = new float[2 * reach + 1];
    for (int i = 0; i < sharp.length; i++) {
      int shift = lag + i - reach;
      int first = Math.max(from, -shift);
      int last = Math.min(to, other[0].length - shift);
      for (int band = 0; band < clip.length; band++) {
        sharp[i] += product(clip[band], other[band], first, last, shift);
      }
    }
    return blurred(sharp);
  }

  private static float[] blurred(float[] sharp) {
    float[] row = new float[sharp.length];
    for (int i = 0; i < row.length; i++) {
      for (int d = Math.max(-BLUR, -i); d <= Math.min(BLUR, row.length - 1 - i); d++) {
        row[i] += sharp[i + d] * (1 + (float) Math.cos(Math.PI * d / (BLUR + 1))) / (2f * BLUR + 2);
      }
    }
    return row;
  }

  private static float product(float[] clip, float[] other, int from, int to, int shift) {
    float sum = 0;
    for (int i = from; i < to; i++) {
      sum += clip[i] * other[i + shift];
    }
    return sum;
  }
}

package org.barsheet.recording;

/**
 * Onsets made alike in loud and soft passages: the root of each rise over the local mean, less the
 * band's mean.
 */
final class Whitened {

  /** Frames on each side of one in its local mean: a second. */
  private static final int AROUND = OnsetBands.RATE;

  /** A first note after silence counts no more than others. */
  private static final double MOST = 2.5;

  private Whitened() {}

  /** The first few bands, a row each. */
  static float[][] of(OnsetBands onsets, int bands) {
    float[][] rows = new float[bands][];
    for (int band = 0; band < bands; band++) {
      rows[band] = row(onsets, band);
    }
    return rows;
  }

  private static float[] row(OnsetBands onsets, int band) {
    int frames = onsets.frames();
    double[] sums = new double[frames + 1];
    for (int i = 0; i < frames; i++) {
      sums[i + 1] = sums[i] + onsets.rise(band, i);
    }
    double overall = sums[frames] / Math.max(1, frames) + 1e-9;
    float[] row = new float[frames];
    double total = 0;
    for (int i = 0; i < frames; i++) {
      int from = Math.max(0, i - AROUND);
      int to = Math.min(frames, i + AROUND + 1);
      double local = (sums[to] - sums[from]) / (to - from);
      double rise = StrictMath.sqrt(onsets.rise(band, i) / (local + overall));
      row[i] = (float) Math.min(MOST, rise);
      total += row[i];
    }
    float mean = (float) (total / Math.max(1, frames));
    for (int i = 0; i < frames; i++) {
      row[i] -= mean;
    }
    return row;
  }
}

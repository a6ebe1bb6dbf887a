package org.barsheet.recording;

import java.util.Arrays;

/** Power of every semitone from the power of the bins of a spectrum. */
final class Semitones {

  static final int LOWEST = 33;
  static final int COUNT = 72;

  /** Width of a semitone's bell, as a standard deviation in semitones. */
  private static final double WIDTH = 0.35;

  private final int[] first = new int[COUNT];
  private final float[][] weights = new float[COUNT][];

  /**
   * Semitones from MIDI key 33 (A1) on.
   *
   * @param size samples of a frame
   * @param rate samples a second
   * @param tuning how much higher than A4 = 440 Hz the music is tuned, in semitones
   */
  Semitones(int size, double rate, double tuning) {
    for (int i = 0; i < COUNT; i++) {
      double middle = hertz(LOWEST + i + tuning) * size / rate;
      double low = hertz(LOWEST + i + tuning - 1) * size / rate;
      double high = hertz(LOWEST + i + tuning + 1) * size / rate;
      first[i] = (int) Math.floor(Math.min(low, middle - 1));
      int half = size / 2;
      int last = (int) Math.min(half, Math.ceil(Math.max(high, middle + 1)));
      weights[i] = new float[Math.max(0, last - first[i] + 1)];
      for (int bin = Math.max(1, first[i]); bin <= last; bin++) {
        double away = (12 * log2(bin * rate / size / 440) + 69 - LOWEST - i - tuning) / WIDTH;
        weights[i][bin - first[i]] = (float) StrictMath.exp(-away * away / 2);
      }
    }
  }

  static double hertz(double key) {
    return 440 * StrictMath.pow(2, (key - 69) / 12);
  }

  private static double log2(double ratio) {
    return StrictMath.log(ratio) / StrictMath.log(2);
  }

  void of(float[] bins, float[] semitones) {
    Arrays.fill(semitones, 0);
    for (int i = 0; i < COUNT; i++) {
      float[] row = weights[i];
      for (int k = 0; k < row.length && first[i] + k < bins.length; k++) {
        semitones[i] += row[k] * bins[Math.max(0, first[i] + k)];
      }
    }
  }
}

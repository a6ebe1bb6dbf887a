package org.barsheet.recording;

import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Short-time power spectra under a Hann window. Two frames are transformed at once, one as the real
 * and one as the imaginary part (W. H. Press and others, Numerical Recipes, 12.3).
 */
final class Spectra {

  private final Sound sound;
  private final int size;
  private final double hop;
  private final float[] window;
  private final double[][] both;

  /**
   * What is done with the power of each frame.
   *
   * <p>{@code power} has a value a bin, bin k at {@code k × rate ÷ size} Hz, and is used again.
   */
  interface Frames {
    void frame(int index, float[] power);
  }

  /**
   * Spectra of a sound.
   *
   * @param size samples of a frame, a power of two
   * @param framesPerSecond frame k is centered at {@code k ÷ framesPerSecond} s
   */
  Spectra(Sound sound, int size, double framesPerSecond) {
    this.sound = sound;
    this.size = size;
    this.hop = sound.rate() / framesPerSecond;
    this.both = new double[2][size];
    this.window = new float[size];
    for (int i = 0; i < size; i++) {
      window[i] = (float) (0.5 - 0.5 * StrictMath.cos(2 * StrictMath.PI * i / size));
    }
  }

  int count() {
    return (int) (sound.length() / hop) + 1;
  }

  /** Gives every frame in order. */
  void forEach(Frames frames) {
    float[] power = new float[size / 2 + 1];
    int count = count();
    for (int i = 0; i < count; i += 2) {
      fill(both[0], i);
      fill(both[1], i + 1);
      FastFourierTransformer.transformInPlace(
          both, DftNormalization.STANDARD, TransformType.FORWARD);
      power(power, 1);
      frames.frame(i, power);
      if (i + 1 < count) {
        power(power, -1);
        frames.frame(i + 1, power);
      }
    }
  }

  private void fill(double[] frame, int index) {
    int from = (int) Math.round(index * hop) - size / 2;
    for (int i = 0; i < size; i++) {
      frame[i] = sound.at(from + i) * window[i];
    }
  }

  /** Power of the frame that was the real part (sign 1) or the imaginary one (−1). */
  private void power(float[] power, int sign) {
    double[] re = both[0];
    double[] im = both[1];
    double scale = 4.0 / ((double) size * size);
    for (int k = 0; k <= size / 2; k++) {
      int mirror = k == 0 ? 0 : size - k;
      double a = 0.5 * (re[k] + sign * re[mirror]);
      double b = 0.5 * (im[k] - sign * im[mirror]);
      power[k] = (float) (scale * (a * a + b * b));
    }
  }
}

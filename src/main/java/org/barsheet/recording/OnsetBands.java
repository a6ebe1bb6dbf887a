package org.barsheet.recording;

import java.util.Arrays;

/**
 * How much each band of frequencies gains, 200 times a second: the rise of its logarithmic power
 * (spectral flux: J. P. Bello and others, "A tutorial on onset detection in music signals", IEEE
 * Transactions on Speech and Audio Processing 13, 2005). Frame k is the rise from {@code (k − 1) ÷
 * 200} s to {@code (k + 1) ÷ 200} s.
 */
public final class OnsetBands {

  /** Frames a second. */
  public static final int RATE = 200;

  private static final double LOWEST_HERTZ = 90;
  private static final double HIGHEST_HERTZ = 9_000;

  /** Power below this part of the greatest counts as silence: −50 dB. */
  private static final double FLOOR = 1e-5;

  /** Noise swings up to this many times its softest tenth. */
  private static final double NOISE = 10;

  private final float[][] bands;

  private OnsetBands(float[][] bands) {
    this.bands = bands;
  }

  /** Onsets told apart by pitch: twelve bands an octave, heard through a window of 80 ms. */
  public static OnsetBands byPitch(Sound sound) {
    return of(sound, 0.08, 12);
  }

  /** Onsets at their sharpest: three bands an octave, heard through a window of 40 ms. */
  public static OnsetBands sharp(Sound sound) {
    return of(sound, 0.04, 3);
  }

  private static OnsetBands of(Sound sound, double windowSeconds, int bandsPerOctave) {
    int size = Integer.highestOneBit((int) (windowSeconds * sound.rate() * 1.4));
    Spectra spectra = new Spectra(sound, size, RATE);
    int[] bandOfBin = bandOfBin(size, sound.rate(), bandsPerOctave);
    int count = Arrays.stream(bandOfBin).max().orElse(0) + 1;
    float[][] power = new float[count][spectra.count()];
    spectra.forEach(
        (frame, bins) -> {
          for (int bin = 0; bin < bins.length; bin++) {
            if (bandOfBin[bin] >= 0) {
              power[bandOfBin[bin]][frame] += bins[bin];
            }
          }
        });
    for (float[] band : power) {
      rises(band);
    }
    return new OnsetBands(power);
  }

  private static int[] bandOfBin(int size, double rate, int bandsPerOctave) {
    int[] band = new int[size / 2 + 1];
    for (int bin = 0; bin < band.length; bin++) {
      double hertz = bin * rate / size;
      boolean heard = hertz >= LOWEST_HERTZ && hertz <= HIGHEST_HERTZ;
      band[bin] = heard ? (int) (bandsPerOctave * log2(hertz / LOWEST_HERTZ)) : -1;
    }
    return withoutGaps(band);
  }

  private static double log2(double ratio) {
    return StrictMath.log(ratio) / StrictMath.log(2);
  }

  /** Low bands narrower than a bin have none: the others are counted without them. */
  private static int[] withoutGaps(int[] band) {
    int next = -1;
    int last = -1;
    for (int bin = 0; bin < band.length; bin++) {
      if (band[bin] >= 0) {
        next += band[bin] == last ? 0 : 1;
        last = band[bin];
        band[bin] = next;
      }
    }
    return band;
  }

  private static void rises(float[] power) {
    double floor = floor(power);
    double[] level = new double[power.length];
    for (int i = 0; i < power.length; i++) {
      level[i] = StrictMath.log(power[i] + floor);
    }
    Arrays.fill(power, 0);
    for (int i = 1; i + 1 < power.length; i++) {
      power[i] = (float) Math.max(0, level[i + 1] - level[i - 1]);
    }
  }

  /** Power that is not told from silence: the band's noise, as heard in its softest tenth. */
  private static double floor(float[] power) {
    float[] sorted = power.clone();
    Arrays.sort(sorted);
    int last = sorted.length - 1;
    return Math.max(1e-12, Math.max(FLOOR * sorted[last], NOISE * sorted[last / 10]));
  }

  /** How many bands, from low to high. */
  public int bands() {
    return bands.length;
  }

  public int frames() {
    return bands.length == 0 ? 0 : bands[0].length;
  }

  /** The rise of a band, in nepers; 0 where there is no frame. */
  public float rise(int band, int frame) {
    return frame < 0 || frame >= bands[band].length ? 0 : bands[band][frame];
  }

  /** The rises of all bands together. */
  public float rise(int frame) {
    float sum = 0;
    for (int band = 0; band < bands.length; band++) {
      sum += rise(band, frame);
    }
    return sum;
  }
}

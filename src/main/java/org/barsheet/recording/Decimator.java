package org.barsheet.recording;

import java.util.Arrays;

/**
 * Keeps every nth sample of what the others leave below half the new rate: a sinc under a Blackman
 * window, symmetrical, so that nothing moves in time (A. V. Oppenheim and R. W. Schafer,
 * Discrete-Time Signal Processing, 7.5). Takes samples as they come and keeps only the few it
 * needs.
 */
final class Decimator {

  /** Zeros of the sinc on each side. */
  private static final int ZEROS = 12;

  private final int every;
  private final float[] filter;
  private final float[] last;
  private float[] kept = new float[1 << 16];
  private int count;
  private long taken;

  /** Keeps every {@code every}th sample; all of them if it is 1. */
  Decimator(int every) {
    this.every = every;
    this.filter = every == 1 ? new float[] {1} : filter(every);
    this.last = new float[filter.length];
  }

  private static float[] filter(int every) {
    int half = ZEROS * every;
    double[] taps = new double[2 * half + 1];
    for (int i = -half; i <= half; i++) {
      double x = StrictMath.PI * i / every;
      double phase = StrictMath.PI * i / half;
      double window = 0.42 + 0.5 * StrictMath.cos(phase) + 0.08 * StrictMath.cos(2 * phase);
      taps[i + half] = window * (i == 0 ? 1 : StrictMath.sin(x) / x);
    }
    double sum = Arrays.stream(taps).sum();
    float[] filter = new float[taps.length];
    for (int i = 0; i < filter.length; i++) {
      filter[i] = (float) (taps[i] / sum);
    }
    return filter;
  }

  void take(float sample) {
    int room = last.length;
    last[(int) (taken % room)] = sample;
    taken++;
    long middle = taken - 1 - room / 2;
    if (middle >= 0 && middle % every == 0) {
      keep(filtered());
    }
  }

  private float filtered() {
    int oldest = (int) (taken % last.length);
    float sum = 0;
    int at = oldest;
    for (float tap : filter) {
      sum += tap * last[at];
      at = at + 1 == last.length ? 0 : at + 1;
    }
    return sum;
  }

  private void keep(float sample) {
    if (count == kept.length) {
      kept = Arrays.copyOf(kept, kept.length + kept.length / 2);
    }
    kept[count++] = sample;
  }

  /** What was kept; nothing may be taken afterwards. */
  float[] finish() {
    for (int i = 0; i < filter.length / 2; i++) {
      take(0);
    }
    return Arrays.copyOf(kept, count);
  }
}

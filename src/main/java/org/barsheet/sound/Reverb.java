package org.barsheet.sound;

import org.barsheet.timing.SoundLayout;

/**
 * A room: eight delay lines that feed each other through a Householder matrix (Jot and Chaigne,
 * "Digital Delay Networks for Designing Artificial Reverberators", AES 1991), high notes damped.
 */
final class Reverb {

  private static final int[] LENGTHS = {1433, 1601, 1867, 2053, 2251, 2399, 2617, 2797};
  private static final int LINES = LENGTHS.length;
  private static final double SECONDS = 1.5;
  private static final float DAMPING = 0.35f;

  /** Smaller values are cut to 0, because a processor slows down on numbers next to nothing. */
  private static final float NOTHING = 1e-15f;

  private final float[][] lines = new float[LINES][];
  private final int[] at = new int[LINES];
  private final float[] gain = new float[LINES];
  private final float[] damped = new float[LINES];

  Reverb() {
    for (int k = 0; k < LINES; k++) {
      lines[k] = new float[LENGTHS[k]];
      double fall = StrictMath.pow(10, -3.0 * LENGTHS[k] / (SECONDS * SoundLayout.SAMPLE_RATE));
      gain[k] = (float) (fall * (1 - DAMPING));
    }
  }

  /** Adds the room's answer to the first {@code length} samples. */
  void addTo(float[] left, float[] right, int length, float share) {
    for (int i = 0; i < length; i++) {
      float input = (left[i] + right[i]) * 0.5f;
      float sum = readAll();
      float outLeft = damped[0] - damped[2] + damped[4] - damped[6];
      float outRight = damped[1] - damped[3] + damped[5] - damped[7];
      writeAll(input - sum * (2f / LINES));
      left[i] += outLeft * share;
      right[i] += outRight * share;
    }
  }

  private float readAll() {
    float sum = 0;
    for (int k = 0; k < LINES; k++) {
      float value = damped[k] * DAMPING + lines[k][at[k]] * gain[k];
      damped[k] = Math.abs(value) < NOTHING ? 0 : value;
      sum += damped[k];
    }
    return sum;
  }

  private void writeAll(float common) {
    for (int k = 0; k < LINES; k++) {
      int place = at[k];
      lines[k][place] = damped[k] + common;
      at[k] = place + 1 == LENGTHS[k] ? 0 : place + 1;
    }
  }
}

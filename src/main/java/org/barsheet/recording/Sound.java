package org.barsheet.recording;

/** One channel of sound, from the first sample of its file on. */
public final class Sound {

  private final float[] samples;
  private final double rate;

  /**
   * Sound of these samples, which nobody may change from now on.
   *
   * @param samples −1 to 1
   * @param rate samples a second, more than 0
   */
  public Sound(float[] samples, double rate) {
    if (!(rate > 0)) {
      throw new IllegalArgumentException("sound has a sampling rate, not " + rate);
    }
    this.samples = samples;
    this.rate = rate;
  }

  public int length() {
    return samples.length;
  }

  /** A sample; silence before the first and after the last. */
  public float at(int index) {
    return index < 0 || index >= samples.length ? 0 : samples[index];
  }

  /** Samples a second. */
  public double rate() {
    return rate;
  }

  public double seconds() {
    return samples.length / rate;
  }
}

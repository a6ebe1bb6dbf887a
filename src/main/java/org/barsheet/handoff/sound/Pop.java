package org.barsheet.handoff.sound;

import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;

/** One frame of a 1 kHz tone, two seconds before film frame 0 (common practice, no source). */
final class Pop implements SampleSource {

  private static final double HERTZ = 1000;
  private static final double STRENGTH = 0.2;

  private final long start;
  private final long end;

  Pop(SoundLayout layout, FrameRate rate) {
    Seconds at = Seconds.ZERO.minus(SoundLayout.POP_BEFORE);
    this.start = layout.sampleAt(at);
    this.end = layout.sampleAt(at.plus(rate.frameDuration()));
  }

  long start() {
    return start;
  }

  @Override
  public void addTo(float[] left, float[] right, long from, int length) {
    for (long sample = Math.max(from, start); sample < Math.min(from + length, end); sample++) {
      double time = (double) (sample - start) / SoundLayout.SAMPLE_RATE;
      float value = (float) (STRENGTH * StrictMath.sin(2 * StrictMath.PI * HERTZ * time));
      left[(int) (sample - from)] += value;
      right[(int) (sample - from)] += value;
    }
  }
}

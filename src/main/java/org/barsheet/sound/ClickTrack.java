package org.barsheet.sound;

import java.util.List;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.SoundLayout.Click;

/**
 * Short clicks, each from its full strength so that its onset is one sample; downbeats are higher
 * and louder. A click that comes before the last one has died away cuts it off.
 */
final class ClickTrack implements SampleSource {

  private static final int LENGTH = SoundLayout.SAMPLE_RATE / 25;
  private static final double DECAY_SECONDS = 0.006;
  private static final float[] DOWNBEAT = click(1760, 0.7);
  private static final float[] BEAT = click(1175, 0.5);

  private final List<Click> clicks;
  private final long[] onsets;
  private int next;

  ClickTrack(SoundLayout layout, List<Click> clicks) {
    this.clicks = clicks;
    this.onsets = clicks.stream().mapToLong(click -> layout.sampleAt(click.at())).toArray();
  }

  /** A cosine, so that it is loudest at once, that dies away. */
  private static float[] click(double hertz, double strength) {
    float[] samples = new float[LENGTH];
    for (int i = 0; i < LENGTH; i++) {
      double time = (double) i / SoundLayout.SAMPLE_RATE;
      double fade = StrictMath.exp(-time / DECAY_SECONDS) * (1 - (double) i / LENGTH);
      samples[i] = (float) (strength * fade * StrictMath.cos(2 * StrictMath.PI * hertz * time));
    }
    return samples;
  }

  @Override
  public void addTo(float[] left, float[] right, long from, int length) {
    while (next < onsets.length && onsets[next] < from + length) {
      next++;
    }
    for (int i = next - 1; i >= 0 && onsets[i] + LENGTH > from; i--) {
      long cutOff = i + 1 < onsets.length ? onsets[i + 1] : Long.MAX_VALUE;
      long end = Math.min(Math.min(onsets[i] + LENGTH, cutOff), from + length);
      float[] sound = clicks.get(i).downbeat() ? DOWNBEAT : BEAT;
      for (long sample = Math.max(onsets[i], from); sample < end; sample++) {
        float value = sound[(int) (sample - onsets[i])];
        left[(int) (sample - from)] += value;
        right[(int) (sample - from)] += value;
      }
    }
  }
}

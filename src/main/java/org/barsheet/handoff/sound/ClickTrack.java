package org.barsheet.handoff.sound;

import java.util.List;
import org.barsheet.handoff.sound.SoundLayout.Click;

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
    for (int i = 0; i < length; i++) {
      long sample = from + i;
      while (next < onsets.length && onsets[next] <= sample) {
        next++;
      }
      if (next > 0 && sample - onsets[next - 1] < LENGTH) {
        float[] sound = clicks.get(next - 1).downbeat() ? DOWNBEAT : BEAT;
        float value = sound[(int) (sample - onsets[next - 1])];
        left[i] += value;
        right[i] += value;
      }
    }
  }
}

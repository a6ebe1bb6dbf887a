package org.barsheet.sound;

import java.util.OptionalLong;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Film;
import org.barsheet.timing.SoundLayout;

/** One frame of a 1 kHz tone before film frame 0, where the plan asks for it. */
final class Pop implements SampleSource {

  private static final double HERTZ = 1000;
  private static final double STRENGTH = 0.2;

  private final long start;
  private final long end;

  Pop(SoundLayout layout, Film film) {
    Seconds at = Seconds.ZERO.minus(film.pop().orElse(Seconds.ZERO));
    this.start = layout.sampleAt(at);
    this.end =
        film.pop().isPresent() ? layout.sampleAt(at.plus(film.rate().frameDuration())) : start;
  }

  /** Where it begins, if it sounds at all. */
  OptionalLong start() {
    return end > start ? OptionalLong.of(start) : OptionalLong.empty();
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

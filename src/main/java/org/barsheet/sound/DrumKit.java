package org.barsheet.sound;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.barsheet.timing.SoundLayout;

/**
 * Sounds of the General MIDI percussion keys (MIDI Manufacturers Association, RP-003), each a
 * falling tone and a burst of noise.
 */
final class DrumKit {

  private static final double TWO_PI = 2 * StrictMath.PI;

  private final Map<Integer, float[]> sounds = new TreeMap<>();

  /** The sound of a key; the same array every time. */
  float[] sound(int key) {
    return sounds.computeIfAbsent(key, DrumKit::make);
  }

  private static float[] make(int key) {
    return switch (key) {
      case 35, 36 -> stroke(key, 120, 48, 0.16, 1.0, 0.004, 0.2);
      case 37, 38, 39, 40 -> stroke(key, 210, 180, 0.07, 0.5, 0.09, 0.6);
      case 42, 44, 54, 69, 70, 82 -> stroke(key, 8000, 8000, 0.01, 0.05, 0.025, 0.4);
      case 41, 43, 45, 47, 48, 50 -> {
        double hertz = 70 + 14 * (key - 41);
        yield stroke(key, hertz * 1.6, hertz, 0.2, 0.9, 0.01, 0.15);
      }
      case 46, 49, 51, 52, 53, 55, 57, 59 -> stroke(key, 6000, 6000, 0.02, 0.05, 0.45, 0.3);
      case 56, 76, 77, 75, 67, 68 ->
          stroke(key, 800 + 40.0 * (key - 56), 800, 0.05, 0.7, 0.002, 0.1);
      case 80, 81 -> stroke(key, 5200, 5200, 0.35, 0.06, 0.004, 0.05);
      default -> stroke(key, 300 + 10.0 * (key - 35), 250, 0.08, 0.6, 0.02, 0.3);
    };
  }

  /**
   * A stroke.
   *
   * @param from hertz the tone begins with
   * @param to hertz it falls to
   * @param toneSeconds in which the tone falls to 1/e
   * @param noiseSeconds the same of the noise
   */
  private static float[] stroke(
      int seed,
      double from,
      double to,
      double toneSeconds,
      double toneShare,
      double noiseSeconds,
      double noiseShare) {
    int length = (int) (6 * Math.max(toneSeconds, noiseSeconds) * SoundLayout.SAMPLE_RATE);
    Random noise = new Random(seed);
    float[] sound = new float[length];
    double phase = 0;
    for (int i = 0; i < length; i++) {
      double time = (double) i / SoundLayout.SAMPLE_RATE;
      phase += (to + (from - to) * StrictMath.exp(-time / 0.03)) / SoundLayout.SAMPLE_RATE;
      double tone = StrictMath.sin(TWO_PI * phase) * StrictMath.exp(-time / toneSeconds);
      double hiss = (2 * noise.nextDouble() - 1) * StrictMath.exp(-time / noiseSeconds);
      sound[i] = (float) (toneShare * tone + noiseShare * hiss);
    }
    return sound;
  }
}

package org.barsheet.sound;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One period of every timbre, made once per octave so that no partial lies above what the sampling
 * rate can carry.
 */
final class Wavetables {

  /** Samples in a period; a power of two. One more is kept, equal to the first. */
  static final int SIZE = 2048;

  private static final double HIGHEST_HERTZ = 18_000;
  private static final double[] SINE = sine();

  private final Map<String, float[]> tables = new TreeMap<>();

  private static double[] sine() {
    double[] sine = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      sine[i] = StrictMath.sin(2 * StrictMath.PI * i / SIZE);
    }
    return sine;
  }

  float[] body(Timbre timbre, double hertz) {
    return table(timbre.name() + " body ", timbre.body(), hertz);
  }

  float[] edge(Timbre timbre, double hertz) {
    return table(timbre.name() + " edge ", timbre.edge(), hertz);
  }

  private float[] table(String name, List<Double> partials, double hertz) {
    int octave = Math.max(0, Math.getExponent(hertz / 16));
    double highestOfOctave = 32.0 * (1 << octave);
    int carried = (int) Math.max(1, HIGHEST_HERTZ / highestOfOctave);
    return tables.computeIfAbsent(name + octave, key -> period(partials, carried));
  }

  private static float[] period(List<Double> partials, int carried) {
    double[] sum = new double[SIZE];
    for (int k = 1; k <= Math.min(partials.size(), carried); k++) {
      for (int i = 0; i < SIZE; i++) {
        sum[i] += partials.get(k - 1) * SINE[(i * k) % SIZE];
      }
    }
    double peak = 0;
    for (double value : sum) {
      peak = Math.max(peak, Math.abs(value));
    }
    float[] table = new float[SIZE + 1];
    for (int i = 0; i <= SIZE; i++) {
      table[i] = (float) (sum[i % SIZE] / peak);
    }
    return table;
  }
}

package org.barsheet.pulse.evidence;

import java.util.Arrays;
import java.util.List;
import org.barsheet.pulse.evidence.Playing.Stroke;

/**
 * How strongly strokes are heard as beats and as beginnings of bars. Long, loud, low and many
 * notes, a change of harmony and a renewed pedal are strong; the weights were chosen on played
 * files kept apart.
 */
public final class StrokeStrength {

  private static final double LONGEST_COUNTED = 1.5;
  private static final double SHORT_SPAN = 0.6;
  private static final double LONG_SPAN = 1.4;
  private static final double NEIGHBOR_SECONDS = 4;
  private static final double[] BAR_WEIGHTS = {0.25, 0.4, 0.3, 0.35, 0.75, 0.75, 0.4};

  private StrokeStrength() {}

  /** Strength of each stroke as a beat, 1 on average. */
  public static double[] ofBeats(Playing playing) {
    List<Stroke> strokes = playing.strokes();
    int[] lows = strokes.stream().mapToInt(Stroke::lowest).sorted().toArray();
    int bass = lows[lows.length / 4];
    double[] changes = Harmony.changes(strokes, SHORT_SPAN);
    double[] strengths = new double[strokes.size()];
    for (int i = 0; i < strengths.length; i++) {
      Stroke stroke = strokes.get(i);
      strengths[i] =
          0.5 * log2(1 + stroke.notes())
              + 0.8 * Math.sqrt(Math.min(stroke.longestSeconds(), LONGEST_COUNTED))
              + 0.7 * stroke.velocity() / 127
              + (stroke.lowest() <= bass ? 0.5 : 0)
              + 0.5 * changes[i]
              + 0.6 * stroke.pedal();
    }
    double mean = Arrays.stream(strengths).average().orElse(1);
    return Arrays.stream(strengths).map(strength -> strength / mean).toArray();
  }

  /** Strength of each stroke as the beginning of a bar, about 0 on average. */
  public static double[] ofBars(Playing playing) {
    List<Stroke> strokes = playing.strokes();
    double[][] features = {
      strokes.stream().mapToDouble(stroke -> log2(1 + stroke.notes())).toArray(),
      strokes.stream().mapToDouble(stroke -> Math.min(2, stroke.longestSeconds())).toArray(),
      strokes.stream().mapToDouble(Stroke::velocity).toArray(),
      strokes.stream().mapToDouble(stroke -> -stroke.lowest()).toArray(),
      Harmony.changes(strokes, SHORT_SPAN),
      Harmony.changes(strokes, LONG_SPAN),
      strokes.stream().mapToDouble(Stroke::pedal).toArray()
    };
    double[] strengths = new double[strokes.size()];
    int from = 0;
    int to = 0;
    for (int i = 0; i < strengths.length; i++) {
      double now = strokes.get(i).seconds();
      while (strokes.get(from).seconds() < now - NEIGHBOR_SECONDS) {
        from++;
      }
      while (to < strengths.length && strokes.get(to).seconds() <= now + NEIGHBOR_SECONDS) {
        to++;
      }
      for (int feature = 0; feature < features.length; feature++) {
        strengths[i] += BAR_WEIGHTS[feature] * Standing.of(features[feature], i, from, to);
      }
    }
    return strengths;
  }

  private static double log2(double number) {
    return Math.log(number) / Math.log(2);
  }
}

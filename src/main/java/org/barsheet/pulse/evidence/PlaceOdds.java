package org.barsheet.pulse.evidence;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.barsheet.pulse.evidence.Playing.Stroke;

/**
 * How much likelier each place in a bar is for a stroke that sounds as it does than for any stroke
 * (a multinomial logistic regression). Many, long, loud and low notes, a change of harmony, time
 * before and after it and parts that begin again tell of bars and beats. The weights were fitted to
 * the written bars of 137 scores (ASAP, CC BY-NC-SA 4.0, not included) and 34 others.
 */
public final class PlaceOdds {

  private static final double LONGEST_COUNTED = 2;
  private static final double SHORT_SPAN = 0.6;
  private static final double LONG_SPAN = 1.4;
  private static final double NEIGHBOR_SECONDS = 4;
  private static final double SHORTEST_GAP = 0.03;
  private static final double LONGEST_GAP = 2;

  /** A row for each of what is told, a column for each place; the last row stands alone. */
  private static final double[][] WEIGHTS = {
    {0.168, 0.060, 0.201, 0.093, -0.523},
    {0.641, 0.501, 0.140, -0.383, -0.899},
    {0.070, 0.182, 0.033, -0.193, -0.091},
    {0.389, 0.179, -0.085, -0.169, -0.314},
    {0.208, 0.008, -0.120, -0.047, -0.049},
    {0.150, -0.143, -0.009, 0.006, -0.003},
    {0.088, 0.271, 0.120, -0.165, -0.314},
    {0.078, -0.091, 0.065, 0.233, -0.284},
    {0.175, -0.181, -0.116, 0.049, 0.073},
    {-0.667, -1.531, 0.333, 0.834, 1.031}
  };

  /** How many of all strokes stand on each place. */
  private static final double[] SHARES = {0.111, 0.034, 0.169, 0.257, 0.429};

  private PlaceOdds() {}

  /** For each stroke the logarithm of the odds of each place, by {@link MeterPattern}'s numbers. */
  public static double[][] of(Playing playing) {
    List<Stroke> strokes = playing.strokes();
    double[][] told = told(strokes);
    double[][] odds = new double[strokes.size()][];
    int from = 0;
    int to = 0;
    for (int i = 0; i < odds.length; i++) {
      double now = strokes.get(i).seconds();
      while (strokes.get(from).seconds() < now - NEIGHBOR_SECONDS) {
        from++;
      }
      while (to < odds.length && strokes.get(to).seconds() <= now + NEIGHBOR_SECONDS) {
        to++;
      }
      double[] standing = new double[told.length];
      for (int feature = 0; feature < told.length; feature++) {
        standing[feature] = Standing.of(told[feature], i, from, to);
      }
      odds[i] = odds(standing);
    }
    return odds;
  }

  private static double[][] told(List<Stroke> strokes) {
    return new double[][] {
      each(strokes, stroke -> Math.log(1 + stroke.notes()) / Math.log(2)),
      each(strokes, stroke -> Math.min(LONGEST_COUNTED, stroke.longestSeconds())),
      each(strokes, Stroke::velocity),
      each(strokes, stroke -> -stroke.lowest()),
      Harmony.changes(strokes, SHORT_SPAN),
      Harmony.changes(strokes, LONG_SPAN),
      IntStream.range(0, strokes.size()).mapToDouble(i -> gap(strokes, i)).toArray(),
      IntStream.range(0, strokes.size()).mapToDouble(i -> gap(strokes, i - 1)).toArray(),
      each(strokes, Stroke::entries)
    };
  }

  private static double[] each(List<Stroke> strokes, ToDoubleFunction<Stroke> told) {
    return strokes.stream().mapToDouble(told).toArray();
  }

  /** Logarithm of the time from a stroke to the next one. */
  private static double gap(List<Stroke> strokes, int index) {
    boolean inside = index >= 0 && index + 1 < strokes.size();
    double gap = inside ? strokes.get(index + 1).seconds() - strokes.get(index).seconds() : 1;
    return Math.log(Math.max(SHORTEST_GAP, Math.min(LONGEST_GAP, gap)));
  }

  private static double[] odds(double[] standing) {
    double[] odds = WEIGHTS[standing.length].clone();
    double sum = 0;
    for (int place = 0; place < odds.length; place++) {
      for (int feature = 0; feature < standing.length; feature++) {
        odds[place] += WEIGHTS[feature][place] * standing[feature];
      }
      sum += Math.exp(odds[place]);
    }
    for (int place = 0; place < odds.length; place++) {
      odds[place] -= Math.log(sum * SHARES[place]);
    }
    return odds;
  }
}

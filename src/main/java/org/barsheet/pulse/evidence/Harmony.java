package org.barsheet.pulse.evidence;

import java.util.List;
import org.barsheet.pulse.evidence.Playing.Stroke;

/** How much the harmony changes: 1 less the cosine of two pitch-class profiles. */
final class Harmony {

  private static final double UNKNOWN = 0.5;

  private Harmony() {}

  /** Change of harmony at each stroke, between so many seconds before it and after it. */
  static double[] changes(List<Stroke> strokes, double spanSeconds) {
    double[] changes = new double[strokes.size()];
    for (int i = 0; i < changes.length; i++) {
      double[] after = new double[12];
      double[] before = new double[12];
      double now = strokes.get(i).seconds();
      for (int j = i; j < changes.length && strokes.get(j).seconds() < now + spanSeconds; j++) {
        add(after, strokes.get(j).chroma());
      }
      for (int j = i - 1; j >= 0 && strokes.get(j).seconds() > now - spanSeconds; j--) {
        add(before, strokes.get(j).chroma());
      }
      changes[i] = change(before, after);
    }
    return changes;
  }

  static void add(double[] sum, double[] chroma) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += chroma[i];
    }
  }

  /** 0 for the same harmony, 1 for no common pitch class, ½ where one side is silent. */
  static double change(double[] before, double[] after) {
    double both = 0;
    double first = 0;
    double second = 0;
    for (int i = 0; i < before.length; i++) {
      both += before[i] * after[i];
      first += before[i] * before[i];
      second += after[i] * after[i];
    }
    return first == 0 || second == 0 ? UNKNOWN : 1 - both / Math.sqrt(first * second);
  }
}

package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How near the hinge the ray of each mark of a protractor begins: as near as it is half a
 * millimeter from the rays beside it. Where rays crowd, every second begins further out, and so on.
 */
final class Rays {

  /** Nothing begins nearer the hinge, in millimeters. */
  private static final double NEAREST = 4;

  private Rays() {}

  /**
   * Distances from the hinge in millimeters, one for each mark.
   *
   * @param degrees of the marks, in ascending order, no two alike
   */
  static List<Double> begin(List<Double> degrees) {
    List<Double> begin = new ArrayList<>(Collections.nCopies(degrees.size(), NEAREST));
    List<Double> drawn = new ArrayList<>();
    for (int step = Integer.highestOneBit(degrees.size()); step >= 1; step /= 2) {
      for (int i = 0; i < degrees.size(); i += step) {
        if (step == Integer.highestOneBit(degrees.size()) || i / step % 2 == 1) {
          begin.set(i, Math.max(NEAREST, apart(degrees.get(i), drawn)));
          drawn.add(degrees.get(i));
        }
      }
    }
    return begin;
  }

  /** Where a ray is far enough from others: their distance at a radius is 2·r·sin(Δθ/2). */
  private static double apart(double degrees, List<Double> others) {
    double least =
        others.stream().mapToDouble(other -> Math.abs(other - degrees)).min().orElse(180);
    return Steps.LEAST / (2 * StrictMath.sin(StrictMath.toRadians(least) / 2));
  }
}

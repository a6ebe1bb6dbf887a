package org.barsheet.align;

import org.barsheet.align.places.Costs;

/**
 * A convex function that is nowhere above the costs of a panel's places: their lower convex hull
 * (monotone chain: Andrew 1979). Costs from {@link Costs#IMPOSSIBLE} on are left out.
 */
final class LowerHull {

  private final Stage stage;
  private final Row costs;
  private final int[] corners;
  private final double[] at;
  private int count;

  LowerHull(Stage stage, Row costs) {
    this.stage = stage;
    this.costs = costs;
    this.corners = new int[costs.size()];
    this.at = new double[corners.length];
    for (int i = costs.from(); i < costs.to(); i++) {
      if (costs.cost(i) < Costs.IMPOSSIBLE) {
        add(i);
      }
    }
    fill();
  }

  private void add(int i) {
    if (count > 0 && stage.cut(corners[count - 1]) == stage.cut(i)) {
      if (costs.cost(corners[count - 1]) <= costs.cost(i)) {
        return;
      }
      count--;
    }
    while (count > 1 && slope(count - 2, corners[count - 1]) >= slope(count - 1, i)) {
      count--;
    }
    corners[count++] = i;
  }

  private double slope(int corner, int to) {
    int from = corners[corner];
    return (double) (costs.cost(to) - costs.cost(from)) / (stage.cut(to) - stage.cut(from));
  }

  private void fill() {
    int corner = 0;
    double slope = count > 1 ? slope(0, corners[1]) : 0;
    for (int i = costs.from(); i < costs.to(); i++) {
      while (corner + 1 < count && stage.cut(corners[corner + 1]) <= stage.cut(i)) {
        corner++;
        slope = corner + 1 < count ? slope(corner, corners[corner + 1]) : 0;
      }
      long past = stage.cut(i) - stage.cut(corners[corner]);
      at[i - costs.from()] = costs.cost(corners[corner]) + slope * past;
    }
  }

  /** The first place that lies under the hull. */
  int first() {
    return costs.from();
  }

  /** The last place that lies under the hull; less than the first if there is none. */
  int last() {
    return costs.to() - 1;
  }

  /** The hull at a place that lies under it. */
  double at(int i) {
    return at[i - costs.from()];
  }

  /** The cost itself. */
  long cost(int i) {
    return costs.cost(i);
  }
}

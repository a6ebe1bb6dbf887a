package org.barsheet.align;

/**
 * A convex function that is nowhere above a row of costs: their lower convex hull (monotone chain:
 * Andrew 1979). Costs from {@link Costs#IMPOSSIBLE} on are left out.
 */
final class LowerHull {

  private final long[] cuts;
  private final long[] costs;
  private final int[] corners;
  private final double[] at;
  private int count;
  private int first;
  private int last = -1;

  /**
   * The hull of some costs.
   *
   * @param cuts where each cost lies, never less than the one before
   */
  LowerHull(long[] cuts, long[] costs) {
    this.cuts = cuts;
    this.costs = costs;
    this.corners = new int[cuts.length];
    this.at = new double[cuts.length];
    for (int i = 0; i < cuts.length; i++) {
      if (costs[i] < Costs.IMPOSSIBLE) {
        first = last < 0 ? i : first;
        last = i;
        add(i);
      }
    }
    fill();
  }

  private void add(int i) {
    if (count > 0 && cuts[corners[count - 1]] == cuts[i]) {
      if (costs[corners[count - 1]] <= costs[i]) {
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
    return (double) (costs[to] - costs[from]) / (cuts[to] - cuts[from]);
  }

  private void fill() {
    int corner = 0;
    for (int i = first; i <= last; i++) {
      while (corner + 1 < count && cuts[corners[corner + 1]] <= cuts[i]) {
        corner++;
      }
      long past = cuts[i] - cuts[corners[corner]];
      double rise = past == 0 ? 0 : slope(corner, corners[corner + 1]) * past;
      at[i] = costs[corners[corner]] + rise;
    }
  }

  /** The first place that lies under the hull. */
  int first() {
    return first;
  }

  /** The last place that lies under the hull; less than the first if there is none. */
  int last() {
    return last;
  }

  /** The hull at a place that lies under it. */
  double at(int i) {
    return at[i];
  }

  /** The cost itself. */
  long cost(int i) {
    return costs[i];
  }
}

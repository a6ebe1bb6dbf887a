package org.barsheet.align;

import java.util.Arrays;
import org.barsheet.align.places.Costs;

/** What each of a run of a panel's places costs; all other places are impossible. */
final class Row {

  private final int from;
  private final long[] costs;

  private Row(int from, long[] costs) {
    this.from = from;
    this.costs = costs;
  }

  /**
   * Costs of places.
   *
   * @param from the first place
   * @param costs of it and the places after it; impossible ones at either end are left out
   */
  static Row of(int from, long[] costs) {
    int first = 0;
    int end = costs.length;
    while (first < end && costs[first] >= Costs.IMPOSSIBLE) {
      first++;
    }
    while (end > first && costs[end - 1] >= Costs.IMPOSSIBLE) {
      end--;
    }
    boolean whole = first == 0 && end == costs.length;
    return whole
        ? new Row(from, costs)
        : new Row(from + first, Arrays.copyOfRange(costs, first, end));
  }

  /** The first place that is possible. */
  int from() {
    return from;
  }

  /** One more than the last place that is possible. */
  int to() {
    return from + costs.length;
  }

  int size() {
    return costs.length;
  }

  /** What a place costs, or {@link Costs#IMPOSSIBLE}. */
  long cost(int i) {
    return i < from || i >= from + costs.length ? Costs.IMPOSSIBLE : costs[i - from];
  }

  /** The least cost, or {@link Costs#IMPOSSIBLE}. */
  long least() {
    return Arrays.stream(costs).min().orElse(Costs.IMPOSSIBLE);
  }
}

package org.barsheet.align;

import java.util.Arrays;
import java.util.function.IntToLongFunction;

/** What each of a run of a panel's places costs; all other places are impossible. */
final class Row {

  private final int from;
  private final long[] costs;

  private Row(int from, long[] costs) {
    this.from = from;
    this.costs = costs;
  }

  /** The costs of the places from one to before another. */
  static Row of(int from, int to, IntToLongFunction cost) {
    long[] costs = new long[Math.max(0, to - from)];
    for (int k = 0; k < costs.length; k++) {
      costs[k] = cost.applyAsLong(from + k);
    }
    return new Row(from, costs).trimmed();
  }

  private Row trimmed() {
    int first = 0;
    int end = costs.length;
    while (first < end && costs[first] >= Costs.IMPOSSIBLE) {
      first++;
    }
    while (end > first && costs[end - 1] >= Costs.IMPOSSIBLE) {
      end--;
    }
    boolean whole = first == 0 && end == costs.length;
    return whole ? this : new Row(from + first, Arrays.copyOfRange(costs, first, end));
  }

  /** The first place that is possible. */
  int from() {
    return from;
  }

  /** One more than the last place that is possible. */
  int to() {
    return from + costs.length;
  }

  boolean isEmpty() {
    return costs.length == 0;
  }

  /** What a place costs, or {@link Costs#IMPOSSIBLE}. */
  long cost(int i) {
    return i < from || i >= to() ? Costs.IMPOSSIBLE : costs[i - from];
  }

  /** The least cost, or {@link Costs#IMPOSSIBLE}. */
  long least() {
    return Arrays.stream(costs).min().orElse(Costs.IMPOSSIBLE);
  }
}

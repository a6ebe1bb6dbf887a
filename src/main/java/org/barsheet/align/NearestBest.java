package org.barsheet.align;

import java.util.function.IntToDoubleFunction;
import java.util.function.IntToLongFunction;

/**
 * Finds the least of some sums of two costs, one of which has a known {@linkplain LowerHull convex
 * lower bound} and the other of which has one as well. The sum of the bounds is convex: so on each
 * side of its lowest place the search ends where the bound has risen to the best sum found, and
 * nothing cheaper is passed over. It begins where the search before it ended up, since the bests of
 * neighbors lie near one another.
 */
final class NearestBest {

  private final LowerHull hull;
  private int near;

  NearestBest(LowerHull hull) {
    this.hull = hull;
    this.near = hull.first();
  }

  /**
   * The least sum.
   *
   * @param from the first place that counts
   * @param to the last place that counts
   * @param bound a convex function that is nowhere above the other cost, whatever rounding does
   * @param sum the whole cost of a place
   * @return {@link Costs#IMPOSSIBLE} if no place is possible
   */
  long least(int from, int to, IntToDoubleFunction bound, IntToLongFunction sum) {
    int first = Math.max(from, hull.first());
    int last = Math.min(to, hull.last());
    if (first > last) {
      return Costs.IMPOSSIBLE;
    }
    near = lowest(Math.max(first, Math.min(last, near)), first, last, bound);
    long best = sum.applyAsLong(near);
    for (int step = -1; step <= 1; step += 2) {
      for (int j = near + step; j >= first && j <= last; j += step) {
        double least = bound.applyAsDouble(j);
        if (least + hull.at(j) >= best) {
          break;
        }
        if (least + hull.cost(j) < best) {
          best = Math.min(best, sum.applyAsLong(j));
        }
      }
    }
    return best;
  }

  /** Where the sum of the bounds is lowest, walking downhill. */
  private int lowest(int start, int first, int last, IntToDoubleFunction bound) {
    int at = start;
    double here = bound.applyAsDouble(at) + hull.at(at);
    for (int step = -1; step <= 1; step += 2) {
      while (at + step >= first && at + step <= last) {
        double beyond = bound.applyAsDouble(at + step) + hull.at(at + step);
        if (beyond > here) {
          break;
        }
        here = beyond;
        at += step;
      }
    }
    return at;
  }
}

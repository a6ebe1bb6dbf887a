package org.barsheet.align;

import org.barsheet.align.places.Costs;

/**
 * Finds the least of some sums of two costs, one of which has a known {@linkplain LowerHull convex
 * lower bound} and the other of which has one as well. The sum of the bounds is convex: so on each
 * side of its lowest place the search ends where the bound has risen to the best sum found, and
 * nothing cheaper is passed over. It begins where the search before it ended up, since the bests of
 * neighbors lie near one another.
 */
final class NearestBest {

  /** The costs that are added to those under the hull. */
  interface Added {

    /** The first other place that counts. */
    int first(int place);

    /** The last other place that counts. */
    int last(int place);

    /** A convex function of the other place that is nowhere above the cost, however rounded. */
    double atLeast(int place, int other);

    /** The whole cost of two places. */
    long whole(int place, int other);
  }

  private final LowerHull hull;
  private final Added added;
  private int near;

  NearestBest(LowerHull hull, Added added) {
    this.hull = hull;
    this.added = added;
    this.near = hull.first();
  }

  /**
   * The least whole cost of a place with another one, {@link Costs#IMPOSSIBLE} if no other place is
   * possible.
   */
  long least(int place) {
    int first = Math.max(added.first(place), hull.first());
    int last = Math.min(added.last(place), hull.last());
    if (first > last) {
      return Costs.IMPOSSIBLE;
    }
    near = lowest(place, Math.max(first, Math.min(last, near)), first, last);
    long best = added.whole(place, near);
    for (int step = -1; step <= 1; step += 2) {
      for (int j = near + step; j >= first && j <= last; j += step) {
        double least = added.atLeast(place, j);
        if (least + hull.at(j) >= best) {
          break;
        }
        if (least + hull.cost(j) < best) {
          best = Math.min(best, added.whole(place, j));
        }
      }
    }
    return best;
  }

  /** Where the sum of the bounds is lowest, walking downhill. */
  private int lowest(int place, int start, int first, int last) {
    int at = start;
    double here = added.atLeast(place, at) + hull.at(at);
    for (int step = -1; step <= 1; step += 2) {
      while (at + step >= first && at + step <= last) {
        double beyond = added.atLeast(place, at + step) + hull.at(at + step);
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

package org.barsheet.align;

import java.util.List;
import java.util.function.LongPredicate;
import java.util.function.LongToDoubleFunction;

/**
 * What a stretch of the film costs at least, wherever one of its panels begins.
 *
 * <p>Lengths cost by a convex function and must add up to the frames there are. For any price λ of
 * a frame the cheapest lengths at that price, plus λ times the frames, bound the true cost from
 * below (Lagrangian relaxation: Geoffrion 1974); the best of many prices is taken.
 */
final class CostBounds {

  private static final int PRICES_A_SIDE = 90;
  private static final double RATIO = 1.2;

  private final CutWindow starts;
  private final CutWindow ends;
  private final double[] prices;
  private final double[][] beforeAt;
  private final double[][] fromAt;

  /**
   * Bounds for a stretch.
   *
   * @param terms of its panels
   * @param starts the frames it may begin on
   * @param ends the frames it may end before
   * @param rewards what its panels together may cost less than the least ordinary choice
   */
  CostBounds(
      List<PanelTerms> terms, CutWindow starts, CutWindow ends, double meanFrames, long rewards) {
    this.starts = starts;
    this.ends = ends;
    this.prices = prices(Costs.LENGTH_ASKED * Costs.ONE / meanFrames);
    int panels = terms.size();
    long frames = ends.last() - starts.first();
    this.beforeAt = new double[panels + 1][prices.length];
    this.fromAt = new double[panels + 1][prices.length];
    for (int k = 0; k < prices.length; k++) {
      beforeAt[0][k] = -rewards;
      for (int p = 0; p < panels; p++) {
        beforeAt[p + 1][k] = beforeAt[p][k] + terms.get(p).leastAtPrice(prices[k], frames);
      }
      for (int p = panels - 1; p >= 0; p--) {
        fromAt[p][k] = fromAt[p + 1][k] + terms.get(p).leastAtPrice(prices[k], frames);
      }
    }
  }

  /**
   * Prices of a frame in millionths, from negative over none to positive, dearest in the middle.
   */
  private static double[] prices(double dearest) {
    double[] prices = new double[2 * PRICES_A_SIDE + 1];
    double price = dearest;
    for (int k = 0; k < PRICES_A_SIDE; k++) {
      prices[k] = -price;
      prices[prices.length - 1 - k] = price;
      price /= RATIO;
    }
    return prices;
  }

  /** What the whole stretch costs at least. */
  double whole() {
    long most = ends.last() - starts.first();
    long best = lowest(frames -> bound(fromAt[0], frames), ends.first() - starts.last(), most);
    return bound(fromAt[0], best) + beforeAt[0][0];
  }

  /**
   * The frames one of its panels may begin on in a layout in which the stretch costs no more than a
   * limit.
   *
   * @param p which panel of the stretch
   * @param cuts the frames it may begin on whatever it costs
   */
  CutWindow within(int p, CutWindow cuts, double limit) {
    if (p == 0 || cuts.last() < cuts.first()) {
      return cuts;
    }
    long film = ends.last() - starts.first();
    long idealBefore = lowest(frames -> bound(beforeAt[p], frames), 0, film);
    long idealAfter = lowest(frames -> bound(fromAt[p], frames), 0, film);
    LongToDoubleFunction least =
        cut ->
            bound(beforeAt[p], clamp(idealBefore, cut - starts.last(), cut - starts.first()))
                + bound(fromAt[p], clamp(idealAfter, ends.first() - cut, ends.last() - cut));
    long lowest = lowest(least, cuts.first(), cuts.last());
    if (least.applyAsDouble(lowest) > limit) {
      return new CutWindow(lowest, lowest - 1);
    }
    return new CutWindow(
        lowest - reach(lowest - cuts.first(), by -> least.applyAsDouble(lowest - by) <= limit),
        lowest + reach(cuts.last() - lowest, by -> least.applyAsDouble(lowest + by) <= limit));
  }

  private static long clamp(long ideal, long least, long most) {
    return Math.max(least, Math.min(most, ideal));
  }

  /** What panels cost at least that have so many frames together. */
  private double bound(double[] at, long frames) {
    int low = 0;
    int high = prices.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      // The bound is concave in the price, so going uphill finds its best.
      double up = at[middle + 1] - at[middle] + (prices[middle + 1] - prices[middle]) * frames;
      if (up >= 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return at[low] + prices[low] * frames;
  }

  /** Where a convex function is lowest. */
  private static long lowest(LongToDoubleFunction cost, long from, long to) {
    long low = from;
    long high = to;
    while (low < high) {
      long middle = Math.floorDiv(low + high, 2);
      if (cost.applyAsDouble(middle + 1) < cost.applyAsDouble(middle)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The farthest step that holds, of those that hold up to some step and none after. */
  private static long reach(long most, LongPredicate holds) {
    long low = 0;
    long high = most;
    while (low < high) {
      long middle = (low + high + 1) >>> 1;
      if (holds.test(middle)) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}

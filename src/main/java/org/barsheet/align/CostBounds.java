package org.barsheet.align;

import java.util.Arrays;
import java.util.List;
import java.util.function.LongPredicate;
import java.util.function.LongToDoubleFunction;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.CutWindow;

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
  private final PricedCost[] before;
  private final PricedCost[] from;
  private final long[] idealBefore;
  private final long[] idealFrom;
  private final double whole;

  /**
   * Bounds for a stretch.
   *
   * @param terms of its panels
   * @param starts the frames it may begin on
   * @param ends the frames it may end before
   */
  CostBounds(List<PanelTerms> terms, CutWindow starts, CutWindow ends, double meanFrames) {
    this.starts = starts;
    this.ends = ends;
    double[] prices = prices(Costs.LENGTH_ASKED * Costs.ONE / meanFrames);
    int panels = terms.size();
    long frames = ends.last() - starts.first();
    double[][] beforeAt = new double[panels + 1][prices.length];
    double[][] fromAt = new double[panels + 1][prices.length];
    for (int k = 0; k < prices.length; k++) {
      for (int p = 0; p < panels; p++) {
        beforeAt[p + 1][k] = beforeAt[p][k] + terms.get(p).leastAtPrice(prices[k], frames);
      }
      for (int p = panels - 1; p >= 0; p--) {
        fromAt[p][k] = fromAt[p + 1][k] + terms.get(p).leastAtPrice(prices[k], frames);
      }
    }
    this.before = pricedCosts(prices, beforeAt);
    this.from = pricedCosts(prices, fromAt);
    this.idealBefore =
        Arrays.stream(before).mapToLong(cost -> lowest(cost::of, 0, frames)).toArray();
    this.idealFrom = Arrays.stream(from).mapToLong(cost -> lowest(cost::of, 0, frames)).toArray();
    this.whole = from[0].of(clamp(idealFrom[0], ends.first() - starts.last(), frames));
  }

  private static PricedCost[] pricedCosts(double[] prices, double[][] costs) {
    return Arrays.stream(costs)
        .map(cost -> new PricedCost(prices, cost))
        .toArray(PricedCost[]::new);
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
    return whole;
  }

  /** What the panels before one of the stretch cost at least, if that begins on a frame. */
  double before(int p, long cut) {
    return before[p].of(clamp(idealBefore[p], cut - starts.last(), cut - starts.first()));
  }

  /** What one panel of the stretch and those after it cost at least, if it begins on a frame. */
  double from(int p, long cut) {
    return from[p].of(clamp(idealFrom[p], ends.first() - cut, ends.last() - cut));
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
    LongToDoubleFunction least = cut -> before(p, cut) + from(p, cut);
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

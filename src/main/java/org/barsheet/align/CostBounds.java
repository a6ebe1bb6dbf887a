package org.barsheet.align;

import java.util.List;

/**
 * What a stretch of the film costs at least, whichever place one of its panels takes.
 *
 * <p>Lengths cost by a convex function and must add up to the frames there are. For any price λ of
 * a frame the cheapest lengths at that price, plus λ times the frames, bound the true cost from
 * below (Lagrangian relaxation: Geoffrion 1974); the best of many prices is taken.
 */
final class CostBounds {

  private static final int PRICES_A_SIDE = 90;
  private static final double RATIO = 1.2;

  private final List<Stage> stages;
  private final long start;
  private final long end;
  private final double[] prices;
  private final double[][] beforeAt;
  private final double[][] fromAt;

  /**
   * Bounds for a stretch.
   *
   * @param stages its panels; the first begins on its first frame whatever place it takes
   * @param start its first frame
   * @param end the frame after its last
   * @param rewards what its panels together may cost less than the least ordinary choice
   */
  CostBounds(List<Stage> stages, long start, long end, double meanFrames, long rewards) {
    this.stages = stages;
    this.start = start;
    this.end = end;
    this.prices = prices(Costs.LENGTH_ASKED * Costs.ONE / meanFrames);
    int panels = stages.size();
    this.beforeAt = new double[panels + 1][prices.length];
    this.fromAt = new double[panels + 1][prices.length];
    for (int k = 0; k < prices.length; k++) {
      beforeAt[0][k] = -rewards;
      for (int p = 0; p < panels; p++) {
        beforeAt[p + 1][k] = beforeAt[p][k] + stages.get(p).leastAtPrice(prices[k], end - start);
      }
      for (int p = panels - 1; p >= 0; p--) {
        fromAt[p][k] = fromAt[p + 1][k] + stages.get(p).leastAtPrice(prices[k], end - start);
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
    int k = bestPrice(fromAt[0], end - start, 0, 1);
    return fromAt[0][k] + prices[k] * (end - start) + beforeAt[0][0];
  }

  /**
   * Whether an answer in which the stretch costs no more than a limit may take each place.
   *
   * @param p which panel of the stretch
   */
  boolean[] within(int p, double limit) {
    Stage stage = stages.get(p);
    boolean[] within = new boolean[stage.size()];
    int before = 0;
    int after = prices.length - 1;
    for (int i = 0; i < within.length; i++) {
      long done = stage.cut(i) - start;
      long left = end - stage.cut(i);
      before = bestPrice(beforeAt[p], done, before, 1);
      after = bestPrice(fromAt[p], left, after, -1);
      double cost = beforeAt[p][before] + prices[before] * done;
      cost += fromAt[p][after] + prices[after] * left;
      within[i] = cost <= limit;
    }
    return within;
  }

  /** The bound is concave in the price, so walking uphill finds its best. */
  private int bestPrice(double[] at, long frames, int from, int step) {
    int k = from;
    int next = k + step;
    while (next >= 0
        && next < prices.length
        && at[next] + prices[next] * frames >= at[k] + prices[k] * frames) {
      k = next;
      next += step;
    }
    return k;
  }
}

package org.barsheet.align;

/**
 * What some panels cost at least that have so many frames together: a convex function, made of a
 * line for each price of a frame. Fast where it is asked for one length after another.
 */
final class PricedCost {

  private final double[] prices;
  private final double[] costs;
  private int near;

  /**
   * A function.
   *
   * @param prices in millionths a frame, each more than the one before
   * @param costs what the panels cost at least at each price, the frames' price taken off
   */
  PricedCost(double[] prices, double[] costs) {
    this.prices = prices;
    this.costs = costs;
    this.near = prices.length / 2;
  }

  /** What they cost at least, in millionths: the highest line, uphill from the last one found. */
  double of(long frames) {
    while (near + 1 < prices.length && rise(near, frames) >= 0) {
      near++;
    }
    while (near > 0 && rise(near - 1, frames) < 0) {
      near--;
    }
    return costs[near] + prices[near] * frames;
  }

  /** How much higher the next line is: less from price to price. */
  private double rise(int k, long frames) {
    return costs[k + 1] - costs[k] + (prices[k + 1] - prices[k]) * frames;
  }
}

package org.barsheet.align;

import org.barsheet.align.NearestBest.Added;

/**
 * The cheapest way from the places of every panel to the film's end: exact dynamic programming from
 * the last panel to the first (Bellman 1957). Places that are known to lie on dearer layouts only
 * can be left out: what comes after them is counted, what comes before them is bounded.
 */
final class CostsToEnd {

  private final Steps steps;
  private final Row[] rows;

  private CostsToEnd(Steps steps) {
    this.steps = steps;
    this.rows = new Row[steps.panels()];
  }

  /** From every place. */
  static CostsToEnd ofAll(Steps steps) {
    CostsToEnd costs = new CostsToEnd(steps);
    for (int p = steps.panels() - 1; p >= 0; p--) {
      costs.rows[p] = costs.row(p, CutWindow.ANY);
    }
    return costs;
  }

  /** Of all layouts that cost no more than a limit; dearer ones may count as impossible. */
  static CostsToEnd within(long limit, Steps steps, FilmBounds bounds) {
    CostsToEnd costs = new CostsToEnd(steps);
    double gap = 0;
    for (int p = steps.panels() - 1; p >= 0; p--) {
      costs.rows[p] = costs.kept(p, limit, gap, bounds);
      gap = costs.gap(p, bounds);
    }
    return costs;
  }

  /**
   * Of layouts among which a good one is found soon: for each panel those places are kept that are
   * not much worse than its most promising one.
   *
   * @param spread how much worse
   * @param limit what a layout may cost at most
   */
  static CostsToEnd promising(long spread, long limit, Steps steps, FilmBounds bounds) {
    CostsToEnd costs = new CostsToEnd(steps);
    double gap = 0;
    double least = bounds.whole();
    for (int p = steps.panels() - 1; p >= 0; p--) {
      double most = least + spread;
      costs.rows[p] = costs.kept(p, most, gap, bounds);
      while (costs.rows[p].isEmpty() && most < limit) {
        most += 4 * (most - least);
        costs.rows[p] = costs.kept(p, Math.min(limit, most), gap, bounds);
      }
      least = costs.leastThrough(p, bounds);
      gap = costs.gap(p, bounds);
    }
    return costs;
  }

  /** The row of those places that lie on layouts which cost no more than a limit. */
  private Row kept(int p, double limit, double gap, FilmBounds bounds) {
    Stage stage = steps.stage(p);
    Row row = row(p, bounds.within(p, limit - gap));
    return Row.of(
        row.from(),
        row.to(),
        i -> row.cost(i) + bounds.before(p, stage.cut(i)) <= limit ? row.cost(i) : Costs.IMPOSSIBLE);
  }

  private double leastThrough(int p, FilmBounds bounds) {
    double least = Costs.IMPOSSIBLE;
    for (int i = rows[p].from(); i < rows[p].to(); i++) {
      least = Math.min(least, rows[p].cost(i) + bounds.before(p, steps.stage(p).cut(i)));
    }
    return least;
  }

  /** By how much panels cost more than their bound at least, wherever this one begins. */
  private double gap(int p, FilmBounds bounds) {
    double gap = Costs.IMPOSSIBLE;
    for (int i = rows[p].from(); i < rows[p].to(); i++) {
      gap = Math.min(gap, rows[p].cost(i) - bounds.from(p, steps.stage(p).cut(i)));
    }
    return gap;
  }

  private Row row(int p, CutWindow window) {
    Stage stage = steps.stage(p);
    int from = stage.firstFrom(window.first());
    int to = window.last() == Long.MAX_VALUE ? stage.size() : stage.firstFrom(window.last() + 1);
    if (p + 1 == steps.panels()) {
      return Row.of(from, to, i -> Steps.sum(steps.lastCost(i), stage.choiceCost(i)));
    }
    Stage next = steps.stage(p + 1);
    NearestBest search = new NearestBest(new LowerHull(next, rows[p + 1]), new ToNext(p));
    return Row.of(
        from,
        to,
        i ->
            Steps.sum(
                search.least(
                    i,
                    next.firstFrom(stage.earliestEnd(i)),
                    next.firstFrom(Math.min(stage.latestEnd(i), steps.filmFrames()) + 1) - 1),
                stage.choiceCost(i)));
  }

  /** What a shot costs from a place of a panel to a place of the next one. */
  private final class ToNext implements Added {

    private final int panel;
    private final Stage stage;
    private final Stage next;

    ToNext(int panel) {
      this.panel = panel;
      this.stage = steps.stage(panel);
      this.next = steps.stage(panel + 1);
    }

    @Override
    public double atLeast(int i, int j) {
      return stage.leastCost(i, next.cut(j));
    }

    @Override
    public long whole(int i, int j) {
      return Steps.sum(rows[panel + 1].cost(j), steps.cost(panel, i, j));
    }
  }

  Steps steps() {
    return steps;
  }

  /** Cost of the best layout, or {@link Costs#IMPOSSIBLE}. */
  long best() {
    return rows[0].least();
  }

  /** Costs from the places of a panel on, the places themselves included. */
  Row row(int p) {
    return rows[p];
  }
}

package org.barsheet.align;

import java.util.function.IntToLongFunction;
import org.barsheet.align.NearestBest.Added;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.CutWindow;
import org.barsheet.align.places.Kept;

/**
 * The cheapest way from the places of every panel to the film's end: exact dynamic programming from
 * the last panel to the first (Bellman 1957). Places that are known to lie on dearer layouts only
 * are left out: what comes after a place is counted, what comes before it has its bound.
 */
final class CostsToEnd {

  /**
   * The places of a panel that are kept.
   *
   * @param row what they cost to the end
   * @param least what a layout through one of them costs at least
   * @param gap by how much they cost more to the end, all of them, than their bound
   */
  private record Kept(Row row, double least, double gap) {}

  private final Steps steps;
  private final Row[] rows;

  private CostsToEnd(Steps steps) {
    this.steps = steps;
    this.rows = new Row[steps.panels()];
  }

  /**
   * Of all layouts that cost no more than a limit; dearer ones may count as impossible.
   *
   * @param limit in millionths
   */
  static CostsToEnd within(double limit, Steps steps) {
    CostsToEnd costs = new CostsToEnd(steps);
    double gap = 0;
    for (int p = steps.panels() - 1; p >= 0; p--) {
      Kept kept = costs.kept(p, limit, gap);
      costs.rows[p] = kept.row();
      gap = kept.gap();
    }
    return costs;
  }

  /**
   * Of layouts among which a good one is found soon: for each panel those places are kept that are
   * not much worse than its most promising one.
   *
   * @param spread how much worse, in millionths
   * @param least what a layout costs at least
   * @param limit what it may cost at most
   */
  static CostsToEnd promising(double spread, double least, double limit, Steps steps) {
    CostsToEnd costs = new CostsToEnd(steps);
    Kept last = new Kept(Row.of(0, new long[0]), least, 0);
    for (int p = steps.panels() - 1; p >= 0; p--) {
      Kept after = last;
      double more = spread;
      do {
        last = costs.kept(p, Math.min(limit, after.least() + more), after.gap());
        more *= 4;
      } while (last.row().size() == 0 && after.least() + more < limit);
      costs.rows[p] = last.row();
    }
    return costs;
  }

  private Kept kept(int p, double limit, double gap) {
    Stage stage = steps.stage(p);
    PanelBounds bounds = steps.bounds().get(p);
    Row row = row(p, bounds.within(limit - gap));
    long[] costs = new long[row.size()];
    double least = Costs.IMPOSSIBLE;
    double leastGap = Costs.IMPOSSIBLE;
    for (int k = 0; k < costs.length; k++) {
      long cost = row.cost(row.from() + k);
      long cut = stage.cut(row.from() + k);
      double through = cost + bounds.before(cut);
      costs[k] = through <= limit ? cost : Costs.IMPOSSIBLE;
      if (through <= limit) {
        least = Math.min(least, through);
        leastGap = Math.min(leastGap, cost - bounds.from(cut));
      }
    }
    return new Kept(Row.of(row.from(), costs), least, leastGap);
  }

  private Row row(int p, CutWindow window) {
    Stage stage = steps.stage(p);
    int from = stage.firstFrom(window.first());
    int to = window.last() == Long.MAX_VALUE ? stage.size() : stage.firstFrom(window.last() + 1);
    IntToLongFunction shotAndRest = shotAndRest(p);
    long[] costs = new long[Math.max(0, to - from)];
    for (int k = 0; k < costs.length; k++) {
      costs[k] = Steps.sum(shotAndRest.applyAsLong(from + k), stage.choiceCost(from + k));
    }
    return Row.of(from, costs);
  }

  private IntToLongFunction shotAndRest(int p) {
    if (p + 1 == steps.panels()) {
      return steps::lastCost;
    }
    LowerHull hull = new LowerHull(steps.stage(p + 1), rows[p + 1]);
    return new NearestBest(hull, new ToNext(p))::least;
  }

  /** What a shot and the rest cost from a place of a panel over a place of the next one. */
  private final class ToNext implements Added {

    private final int panel;
    private final Stage stage;
    private final Stage next;
    private final Row rest;
    private int first;
    private int end;

    ToNext(int panel) {
      this.panel = panel;
      this.stage = steps.stage(panel);
      this.next = steps.stage(panel + 1);
      this.rest = rows[panel + 1];
      this.first = rest.from();
      this.end = rest.to();
    }

    @Override
    public int first(int i) {
      first = next.firstFrom(stage.earliestEnd(i), first);
      return first;
    }

    @Override
    public int last(int i) {
      end = next.firstFrom(Math.min(stage.latestEnd(i), steps.filmFrames()) + 1, end);
      return end - 1;
    }

    @Override
    public double atLeast(int i, int j) {
      return stage.leastCost(i, next.cut(j));
    }

    @Override
    public long whole(int i, int j) {
      return Steps.sum(rest.cost(j), steps.cost(panel, i, j));
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

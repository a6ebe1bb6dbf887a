package org.barsheet.align;

import java.util.List;
import org.barsheet.align.NearestBest.Added;

/**
 * The cheapest way from every place of every panel to the film's end, and from the film's start to
 * it. Costs are whole numbers, so sums are exact.
 */
public final class AlignerTable {

  private final Steps steps;
  private final CostsToEnd toEnd;
  private final Row[] fromStart;
  private final long[] leastSofar;

  /** A table of every layout. */
  public AlignerTable(List<Stage> stages, long filmFrames) {
    this(CostsToEnd.ofAll(new Steps(stages, filmFrames)), Costs.IMPOSSIBLE);
  }

  /**
   * A table of the best layout and those that cost little more.
   *
   * @param margin by how much a layout may be dearer than the best, in millionths; what lies on
   *     dearer ones only counts as impossible
   */
  AlignerTable(CostsToEnd toEnd, long margin) {
    this.steps = toEnd.steps();
    this.toEnd = toEnd;
    this.fromStart = new Row[steps.panels()];
    this.leastSofar = new long[steps.panels()];
    long dearest = Steps.sum(best(), margin);
    for (int p = 0; p < fromStart.length; p++) {
      fromStart[p] = near(p, forward(p), dearest);
    }
  }

  private Row near(int p, Row row, long dearest) {
    return Row.of(
        row.from(),
        row.to(),
        i -> Steps.sum(row.cost(i), toEnd(p, i)) <= dearest ? row.cost(i) : Costs.IMPOSSIBLE);
  }

  private Row forward(int p) {
    Row rest = toEnd.row(p);
    if (p == 0) {
      return Row.of(rest.from(), rest.to(), i -> 0);
    }
    Stage before = steps.stage(p - 1);
    Row done = fromStart[p - 1];
    Row sofar = Row.of(done.from(), done.to(), i -> sofar(p - 1, i));
    leastSofar[p - 1] = sofar.least();
    NearestBest search =
        new NearestBest(new LowerHull(before, sofar), new FromBefore(p, sofar));
    return Row.of(
        rest.from(),
        rest.to(),
        j -> rest.cost(j) < Costs.IMPOSSIBLE ? cheapestBefore(p, j, search) : Costs.IMPOSSIBLE);
  }

  private long cheapestBefore(int p, int j, NearestBest search) {
    Stage before = steps.stage(p - 1);
    long cut = steps.stage(p).cut(j);
    return search.least(
        j,
        before.firstFrom(cut - before.mostFrames()),
        before.firstFrom(cut - before.leastFrames() + 1) - 1);
  }

  /** What a shot costs to a place of a panel from a place of the one before. */
  private final class FromBefore implements Added {

    private final int panel;
    private final Row sofar;
    private final Stage before;
    private final Stage stage;

    FromBefore(int panel, Row sofar) {
      this.panel = panel;
      this.sofar = sofar;
      this.before = steps.stage(panel - 1);
      this.stage = steps.stage(panel);
    }

    @Override
    public double atLeast(int j, int i) {
      return before.leastCost(stage.cut(j) - before.cut(i));
    }

    @Override
    public long whole(int j, int i) {
      return Steps.sum(sofar.cost(i), steps.cost(panel - 1, i, j));
    }
  }

  /** Cost of a panel's shot if the next panel takes a place, or {@link Costs#IMPOSSIBLE}. */
  long step(int p, int i, int j) {
    return steps.cost(p, i, j);
  }

  /** Cost of the best whole layout, or {@link Costs#IMPOSSIBLE}. */
  public long best() {
    return toEnd.best();
  }

  /** Cost of the best whole layout in which a panel takes a place. */
  public long bestThrough(int p, int i) {
    return Steps.sum(fromStart[p].cost(i), toEnd(p, i));
  }

  /** Cost from a place on, the place itself included. */
  long toEnd(int p, int i) {
    return toEnd.row(p).cost(i);
  }

  /** What a whole layout costs. */
  public long costOf(int[] layout) {
    int last = layout.length - 1;
    long cost = steps.lastCost(layout[last]);
    for (int p = 0; p <= last; p++) {
      long shot = p < last ? step(p, layout[p], layout[p + 1]) : 0;
      cost += steps.stage(p).choiceCost(layout[p]) + shot;
    }
    return cost;
  }

  /** Of the best whole layouts the one whose cuts are earliest, first panel first. */
  public int[] bestLayout() {
    int[] layout = new int[steps.panels()];
    while (toEnd(0, layout[0]) != best()) {
      layout[0]++;
    }
    for (int q = 0; q + 1 < layout.length; q++) {
      layout[q + 1] = nextOnBest(q, layout[q]);
    }
    return layout;
  }

  /**
   * The best whole layout in which a panel takes a place. Where it meets another best layout it
   * goes on as that one does.
   *
   * @param best the best layout
   */
  int[] layoutThrough(int p, int i, int[] best) {
    int[] layout = best.clone();
    layout[p] = i;
    for (int q = p; q > 0 && layout[q] != best[q]; q--) {
      layout[q - 1] = beforeOnBest(q, layout[q]);
    }
    for (int q = p; q + 1 < layout.length && layout[q] != best[q]; q++) {
      layout[q + 1] = nextOnBest(q, layout[q]);
    }
    return layout;
  }

  private int beforeOnBest(int q, int j) {
    Stage before = steps.stage(q - 1);
    long wanted = fromStart[q].cost(j);
    int i = firstBefore(q, j, wanted);
    while (sofar(q - 1, i) > wanted || Steps.sum(sofar(q - 1, i), step(q - 1, i, j)) != wanted) {
      i++;
    }
    return i;
  }

  /** No place before it costs so little with its length that the whole costs what is wanted. */
  private int firstBefore(int q, int j, long wanted) {
    Stage before = steps.stage(q - 1);
    long cut = steps.stage(q).cut(j);
    double most = (double) (wanted - leastSofar[q - 1]);
    int low = before.firstFrom(cut - before.mostFrames());
    int high = before.firstFrom(cut - (long) before.leastWanted());
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (before.leastCost(cut - before.cut(middle)) > most) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private long sofar(int p, int i) {
    return Steps.sum(fromStart[p].cost(i), steps.stage(p).choiceCost(i));
  }

  private int nextOnBest(int q, int i) {
    long rest = toEnd(q, i) - steps.stage(q).choiceCost(i);
    int j = steps.stage(q + 1).firstFrom(steps.stage(q).earliestEnd(i));
    while (toEnd(q + 1, j) > rest || Steps.sum(step(q, i, j), toEnd(q + 1, j)) != rest) {
      j++;
    }
    return j;
  }
}

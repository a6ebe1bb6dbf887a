package org.barsheet.align;

import java.util.List;
import java.util.function.IntToLongFunction;
import org.barsheet.align.NearestBest.Added;
import org.barsheet.align.places.Costs;

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
    this(
        CostsToEnd.within((double) Costs.IMPOSSIBLE, new Steps(stages, filmFrames)),
        Costs.IMPOSSIBLE);
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
    double gap = 0;
    for (int p = 0; p < fromStart.length; p++) {
      fromStart[p] = forward(p, dearest, gap);
      gap = gap(p);
    }
  }

  /**
   * Costs to the places of a panel that lie on near layouts.
   *
   * @param gap by how much the panels before it cost more than their bound at least
   */
  private Row forward(int p, long dearest, double gap) {
    Stage stage = steps.stage(p);
    PanelBounds bounds = steps.bounds().get(p);
    Row rest = toEnd.row(p);
    IntToLongFunction before = p == 0 ? j -> 0 : search(p)::least;
    long[] costs = new long[rest.size()];
    for (int k = 0; k < costs.length; k++) {
      int j = rest.from() + k;
      boolean open = rest.cost(j) + bounds.before(stage.cut(j)) + gap <= dearest;
      long cost = open ? before.applyAsLong(j) : Costs.IMPOSSIBLE;
      costs[k] = Steps.sum(cost, rest.cost(j)) <= dearest ? cost : Costs.IMPOSSIBLE;
    }
    return Row.of(rest.from(), costs);
  }

  private double gap(int p) {
    PanelBounds bounds = steps.bounds().get(p);
    double gap = Costs.IMPOSSIBLE;
    for (int j = fromStart[p].from(); j < fromStart[p].to(); j++) {
      gap = Math.min(gap, fromStart[p].cost(j) - bounds.before(steps.stage(p).cut(j)));
    }
    return gap;
  }

  private NearestBest search(int p) {
    Row done = fromStart[p - 1];
    long[] costs = new long[done.size()];
    for (int k = 0; k < costs.length; k++) {
      costs[k] = sofar(p - 1, done.from() + k);
    }
    Row sofar = Row.of(done.from(), costs);
    leastSofar[p - 1] = sofar.least();
    return new NearestBest(new LowerHull(steps.stage(p - 1), sofar), new FromBefore(p, sofar));
  }

  /** What a shot costs to a place of a panel from a place of the one before. */
  private final class FromBefore implements Added {

    private final int panel;
    private final Row sofar;
    private final Stage before;
    private final Stage stage;
    private int first;
    private int end;

    FromBefore(int panel, Row sofar) {
      this.panel = panel;
      this.sofar = sofar;
      this.before = steps.stage(panel - 1);
      this.stage = steps.stage(panel);
      this.first = sofar.from();
      this.end = sofar.to();
    }

    @Override
    public int first(int j) {
      first = before.firstFrom(stage.cut(j) - before.mostFrames(), first);
      return first;
    }

    @Override
    public int last(int j) {
      end = before.firstFrom(stage.cut(j) - before.leastFrames() + 1, end);
      return end - 1;
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

  /** Costs from the film's start to a panel's places, those of them that lie on near layouts. */
  Row near(int p) {
    return fromStart[p];
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

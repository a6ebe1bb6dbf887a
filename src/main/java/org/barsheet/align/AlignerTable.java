package org.barsheet.align;

import java.util.Arrays;
import java.util.List;

/**
 * The cheapest way from every place of every panel to the film's end, and from the film's start to
 * it: exact dynamic programming over the candidate places (Bellman 1957). Costs are whole numbers,
 * so sums are exact.
 */
public final class AlignerTable {

  /** What rounding can make of a bound, in millionths. */
  private static final double ROUNDING = 2;

  private final List<Stage> stages;
  private final long filmFrames;
  private final long[][] toEnd;
  private final long[][] fromStart;
  private final long[] leastSofar;

  /** A table of every layout. */
  public AlignerTable(List<Stage> stages, long filmFrames) {
    this(stages, filmFrames, Costs.IMPOSSIBLE);
  }

  /**
   * A table of the best layout and those that cost little more.
   *
   * @param margin by how much a layout may be dearer than the best, in millionths; what lies on
   *     dearer ones only counts as impossible
   */
  AlignerTable(List<Stage> stages, long filmFrames, long margin) {
    this.stages = List.copyOf(stages);
    this.filmFrames = filmFrames;
    this.toEnd = new long[stages.size()][];
    this.fromStart = new long[stages.size()][];
    this.leastSofar = new long[stages.size()];
    for (int p = stages.size() - 1; p >= 0; p--) {
      toEnd[p] = backward(p);
    }
    long dearest = sum(best(), margin);
    for (int p = 0; p < stages.size(); p++) {
      fromStart[p] = forward(p, dearest);
    }
  }

  private long[] backward(int p) {
    Stage stage = stages.get(p);
    long[] best = new long[stage.size()];
    if (p + 1 == stages.size()) {
      for (int i = 0; i < best.length; i++) {
        best[i] = sum(stage.shotCost(i, filmFrames), stage.choiceCost(i));
      }
      return best;
    }
    Stage next = stages.get(p + 1);
    NearestBest search = new NearestBest(new LowerHull(cuts(next), toEnd[p + 1]));
    for (int i = 0; i < best.length; i++) {
      int here = i;
      long rest =
          search.least(
              next.firstFrom(stage.earliestEnd(i)),
              next.firstFrom(Math.min(stage.latestEnd(i), filmFrames) + 1) - 1,
              j -> stage.plainLengthCost(here, next.cut(j)) - ROUNDING,
              j -> sum(toEnd[p + 1][j], step(p, here, j)));
      best[i] = sum(rest, stage.choiceCost(i));
    }
    return best;
  }

  private long[] forward(int p, long dearest) {
    Stage stage = stages.get(p);
    long[] best = new long[stage.size()];
    if (p == 0) {
      return best;
    }
    Stage before = stages.get(p - 1);
    long[] sofar = new long[before.size()];
    for (int i = 0; i < sofar.length; i++) {
      boolean near = bestThrough(p - 1, i) <= dearest;
      sofar[i] = near ? sofar(p - 1, i) : Costs.IMPOSSIBLE;
    }
    leastSofar[p - 1] = Arrays.stream(sofar).min().orElse(Costs.IMPOSSIBLE);
    NearestBest search = new NearestBest(new LowerHull(cuts(before), sofar));
    for (int j = 0; j < best.length; j++) {
      best[j] =
          toEnd[p][j] < Costs.IMPOSSIBLE ? cheapestBefore(p, j, sofar, search) : Costs.IMPOSSIBLE;
    }
    return best;
  }

  private long cheapestBefore(int p, int j, long[] sofar, NearestBest search) {
    Stage before = stages.get(p - 1);
    long cut = stages.get(p).cut(j);
    return search.least(
        before.firstFrom(cut - before.mostFrames()),
        before.firstFrom(cut - before.leastFrames() + 1) - 1,
        i -> before.leastLengthCost(cut - before.cut(i)) - ROUNDING,
        i -> sum(sofar[i], step(p - 1, i, j)));
  }

  private static long[] cuts(Stage stage) {
    long[] cuts = new long[stage.size()];
    for (int i = 0; i < cuts.length; i++) {
      cuts[i] = stage.cut(i);
    }
    return cuts;
  }

  /** Cost of a panel's shot if the next panel takes a place, or {@link Costs#IMPOSSIBLE}. */
  long step(int p, int i, int j) {
    Stage next = stages.get(p + 1);
    return next.canFollow(j, stages.get(p), i)
        ? stages.get(p).shotCost(i, next.cut(j))
        : Costs.IMPOSSIBLE;
  }

  private static long sum(long one, long other) {
    return Math.min(Costs.IMPOSSIBLE, one + other);
  }

  /** Cost of the best whole layout, or {@link Costs#IMPOSSIBLE}. */
  public long best() {
    return Arrays.stream(toEnd[0]).min().orElse(Costs.IMPOSSIBLE);
  }

  /** Cost of the best whole layout in which a panel takes a place. */
  public long bestThrough(int p, int i) {
    return sum(fromStart[p][i], toEnd[p][i]);
  }

  /** Cost from a place on, the place itself included. */
  long toEnd(int p, int i) {
    return toEnd[p][i];
  }

  /** What a whole layout costs. */
  public long costOf(int[] layout) {
    int last = layout.length - 1;
    long cost = stages.get(last).shotCost(layout[last], filmFrames);
    for (int p = 0; p <= last; p++) {
      cost +=
          stages.get(p).choiceCost(layout[p]) + (p < last ? step(p, layout[p], layout[p + 1]) : 0);
    }
    return cost;
  }

  /** Of the best whole layouts the one whose cuts are earliest, first panel first. */
  public int[] bestLayout() {
    int[] layout = new int[stages.size()];
    while (toEnd[0][layout[0]] != best()) {
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
    Stage before = stages.get(q - 1);
    long wanted = fromStart[q][j];
    int i = firstBefore(q, j, wanted);
    while (sofar(q - 1, i) > wanted || sum(sofar(q - 1, i), step(q - 1, i, j)) != wanted) {
      i++;
    }
    return i;
  }

  /** No place before it costs so little with its length that the whole costs what is wanted. */
  private int firstBefore(int q, int j, long wanted) {
    Stage before = stages.get(q - 1);
    long cut = stages.get(q).cut(j);
    double most = (double) (wanted - leastSofar[q - 1]) + ROUNDING;
    int low = before.firstFrom(cut - before.mostFrames());
    int high = before.firstFrom(cut - (long) before.leastWanted());
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (before.leastLengthCost(cut - before.cut(middle)) > most) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private long sofar(int p, int i) {
    return sum(fromStart[p][i], stages.get(p).choiceCost(i));
  }

  private int nextOnBest(int q, int i) {
    long rest = toEnd[q][i] - stages.get(q).choiceCost(i);
    int j = stages.get(q + 1).firstFrom(stages.get(q).earliestEnd(i));
    while (toEnd[q + 1][j] > rest || sum(step(q, i, j), toEnd[q + 1][j]) != rest) {
      j++;
    }
    return j;
  }
}

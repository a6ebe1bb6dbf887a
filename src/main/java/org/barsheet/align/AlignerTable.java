package org.barsheet.align;

import java.util.Arrays;
import java.util.List;

/**
 * The cheapest way from every place of every panel to the film's end, and from the film's start to
 * it: exact dynamic programming over the candidate places (Bellman 1957). Costs are whole numbers,
 * so sums are exact.
 */
public final class AlignerTable {

  private final List<Stage> stages;
  private final long filmFrames;
  private final long[][] toEnd;
  private final long[][] fromStart;

  public AlignerTable(List<Stage> stages, long filmFrames) {
    this.stages = List.copyOf(stages);
    this.filmFrames = filmFrames;
    this.toEnd = new long[stages.size()][];
    this.fromStart = new long[stages.size()][];
    for (int p = stages.size() - 1; p >= 0; p--) {
      toEnd[p] = backward(p);
    }
    for (int p = 0; p < stages.size(); p++) {
      fromStart[p] = forward(p);
    }
  }

  private long[] backward(int p) {
    Stage stage = stages.get(p);
    long[] best = new long[stage.size()];
    Minima after = p + 1 == stages.size() ? new Minima(new long[0]) : new Minima(toEnd[p + 1]);
    for (int i = 0; i < best.length; i++) {
      long rest =
          p + 1 == stages.size() ? stage.shotCost(i, filmFrames) : cheapestNext(p, i, after);
      best[i] = sum(rest, stage.choiceCost(i));
    }
    return best;
  }

  /**
   * The cheapest way on from a place. It looks outwards from the end the shot would like best, and
   * on each side stops where length alone, with the cheapest rest beyond, is dearer than the best
   * found: so nothing cheaper is passed over.
   */
  private long cheapestNext(int p, int i, Minima rest) {
    Stage here = stages.get(p);
    Stage next = stages.get(p + 1);
    int first = next.firstFrom(here.earliestEnd(i));
    int last = next.firstFrom(Math.min(here.latestEnd(i), filmFrames) + 1) - 1;
    int middle = Math.max(first, Math.min(last, next.firstFrom(here.wantedEnd(i))));
    long best = Costs.IMPOSSIBLE;
    for (int j = middle; j <= last; j++) {
      boolean past = next.cut(j) > here.wantedEnd(i);
      if (past && here.lengthCost(i, next.cut(j)) + rest.from(j) >= best) {
        break;
      }
      best = better(best, toEnd[p + 1][j], p, i, j);
    }
    for (int j = middle - 1; j >= first; j--) {
      if (here.lengthCost(i, next.cut(j)) + rest.upTo(j) >= best) {
        break;
      }
      best = better(best, toEnd[p + 1][j], p, i, j);
    }
    return best;
  }

  private long better(long best, long rest, int p, int i, int j) {
    return rest < best ? Math.min(best, sum(rest, step(p, i, j))) : best;
  }

  private long[] forward(int p) {
    long[] best = new long[stages.get(p).size()];
    if (p == 0) {
      return best;
    }
    Stage before = stages.get(p - 1);
    long[] sofar = new long[before.size()];
    for (int i = 0; i < sofar.length; i++) {
      sofar[i] = sofar(p - 1, i);
    }
    Minima minima = new Minima(sofar);
    for (int j = 0; j < best.length; j++) {
      best[j] = cheapestBefore(p, j, sofar, minima);
    }
    return best;
  }

  /** The cheapest way to a place, looking outwards as {@link #cheapestNext} does. */
  private long cheapestBefore(int p, int j, long[] sofar, Minima minima) {
    Stage before = stages.get(p - 1);
    long cut = stages.get(p).cut(j);
    int first = before.firstFrom(cut - before.mostFrames());
    int last = before.firstFrom(cut - before.leastFrames() + 1) - 1;
    int ideal = before.firstFrom(cut - before.wantedFrames());
    int middle = Math.max(first, Math.min(last + 1, ideal));
    long best = Costs.IMPOSSIBLE;
    for (int i = middle; i <= last; i++) {
      if (before.leastLengthCost(cut - before.cut(i)) + minima.from(i) >= best) {
        break;
      }
      best = better(best, sofar[i], p - 1, i, j);
    }
    for (int i = middle - 1; i >= first; i--) {
      if (before.leastLengthCost(cut - before.cut(i)) + minima.upTo(i) >= best) {
        break;
      }
      best = better(best, sofar[i], p - 1, i, j);
    }
    return best;
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

  /** Cost of the best whole answer, or {@link Costs#IMPOSSIBLE}. */
  public long best() {
    return Arrays.stream(toEnd[0]).min().orElse(Costs.IMPOSSIBLE);
  }

  /** Cost of the best whole answer in which a panel takes a place. */
  public long bestThrough(int p, int i) {
    return sum(fromStart[p][i], toEnd[p][i]);
  }

  /** Cost from a place on, the place itself included. */
  long toEnd(int p, int i) {
    return toEnd[p][i];
  }

  /** What a whole answer costs. */
  public long costOf(int[] answer) {
    int last = answer.length - 1;
    long cost = stages.get(last).shotCost(answer[last], filmFrames);
    for (int p = 0; p <= last; p++) {
      cost +=
          stages.get(p).choiceCost(answer[p]) + (p < last ? step(p, answer[p], answer[p + 1]) : 0);
    }
    return cost;
  }

  /** Of the best whole answers the one whose cuts are earliest, first panel first. */
  public int[] bestAnswer() {
    int[] answer = new int[stages.size()];
    while (toEnd[0][answer[0]] != best()) {
      answer[0]++;
    }
    for (int q = 0; q + 1 < answer.length; q++) {
      answer[q + 1] = nextOnBest(q, answer[q]);
    }
    return answer;
  }

  /**
   * The best whole answer in which a panel takes a place. Where it meets another best answer it
   * goes on as that one does.
   *
   * @param best the best answer
   */
  int[] answerThrough(int p, int i, int[] best) {
    int[] answer = best.clone();
    answer[p] = i;
    for (int q = p; q > 0 && answer[q] != best[q]; q--) {
      answer[q - 1] = beforeOnBest(q, answer[q]);
    }
    for (int q = p; q + 1 < answer.length && answer[q] != best[q]; q++) {
      answer[q + 1] = nextOnBest(q, answer[q]);
    }
    return answer;
  }

  private int beforeOnBest(int q, int j) {
    Stage before = stages.get(q - 1);
    long wanted = fromStart[q][j];
    int i = before.firstFrom(stages.get(q).cut(j) - before.mostFrames());
    while (sofar(q - 1, i) > wanted || sum(sofar(q - 1, i), step(q - 1, i, j)) != wanted) {
      i++;
    }
    return i;
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

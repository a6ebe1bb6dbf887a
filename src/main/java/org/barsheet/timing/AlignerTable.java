package org.barsheet.timing;

import java.util.Arrays;
import java.util.List;

/**
 * The cheapest way from every place of every panel to the film's end, and from the film's start to
 * it: exact dynamic programming over the candidate places (Bellman 1957). Costs are whole numbers,
 * so sums are exact.
 */
final class AlignerTable {

  private final List<Stage> stages;
  private final long filmFrames;
  private final long[][] toEnd;
  private final long[][] fromStart;

  AlignerTable(List<Stage> stages, long filmFrames) {
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
    for (int i = 0; i < best.length; i++) {
      long rest = p + 1 == stages.size() ? stage.shotCost(i, filmFrames) : cheapestNext(p, i);
      best[i] = sum(rest, stage.choiceCost(i));
    }
    return best;
  }

  private long cheapestNext(int p, int i) {
    Stage next = stages.get(p + 1);
    long best = Costs.IMPOSSIBLE;
    long last = stages.get(p).latestEnd(i);
    for (int j = firstFrom(next, stages.get(p).earliestEnd(i));
        j < next.size() && next.cut(j) <= last;
        j++) {
      if (toEnd[p + 1][j] < best) {
        best = Math.min(best, sum(step(p, i, j), toEnd[p + 1][j]));
      }
    }
    return best;
  }

  private long[] forward(int p) {
    long[] best = new long[stages.get(p).size()];
    Arrays.fill(best, p == 0 ? 0 : Costs.IMPOSSIBLE);
    if (p == 0) {
      return best;
    }
    Stage before = stages.get(p - 1);
    Stage stage = stages.get(p);
    for (int i = 0; i < before.size(); i++) {
      long sofar = sum(fromStart[p - 1][i], before.choiceCost(i));
      if (sofar >= Costs.IMPOSSIBLE) {
        continue;
      }
      for (int j = firstFrom(stage, before.earliestEnd(i));
          j < stage.size() && stage.cut(j) <= before.latestEnd(i);
          j++) {
        if (sofar < best[j]) {
          best[j] = Math.min(best[j], sum(sofar, step(p - 1, i, j)));
        }
      }
    }
    return best;
  }

  /** Cost of a panel's shot if the next panel takes a place, or {@link Costs#IMPOSSIBLE}. */
  long step(int p, int i, int j) {
    Candidate here = stages.get(p).candidate(i);
    Candidate next = stages.get(p + 1).candidate(j);
    boolean follows = next.afterCut() == Candidate.ANY || next.afterCut() == here.cut();
    return follows && !isSameCue(here, next)
        ? stages.get(p).shotCost(i, next.cut())
        : Costs.IMPOSSIBLE;
  }

  private static boolean isSameCue(Candidate one, Candidate other) {
    return one.cue().frame() == other.cue().frame() && one.cue().id().equals(other.cue().id());
  }

  private static int firstFrom(Stage stage, long frame) {
    int low = 0;
    int high = stage.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (stage.cut(middle) < frame) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static long sum(long one, long other) {
    return Math.min(Costs.IMPOSSIBLE, one + other);
  }

  /** Cost of the best whole answer, or {@link Costs#IMPOSSIBLE}. */
  long best() {
    return Arrays.stream(toEnd[0]).min().orElse(Costs.IMPOSSIBLE);
  }

  /** Cost of the best whole answer in which a panel takes a place. */
  long bestThrough(int p, int i) {
    return sum(fromStart[p][i], toEnd[p][i]);
  }

  /** Cost from a place on, the place itself included. */
  long toEnd(int p, int i) {
    return toEnd[p][i];
  }

  /** Of the best whole answers the one whose cuts are earliest, first panel first. */
  int[] bestAnswer() {
    int[] answer = new int[stages.size()];
    long rest = best();
    for (int p = 0; p < answer.length; p++) {
      int i = p == 0 ? indexOf(toEnd[0], rest) : nextOnBest(p - 1, answer[p - 1], rest);
      answer[p] = i;
      if (p + 1 < answer.length) {
        rest = toEnd[p][i] - stages.get(p).choiceCost(i);
      }
    }
    return answer;
  }

  private int nextOnBest(int p, int i, long rest) {
    Stage next = stages.get(p + 1);
    int j = firstFrom(next, stages.get(p).earliestEnd(i));
    while (sum(step(p, i, j), toEnd[p + 1][j]) != rest) {
      j++;
    }
    return j;
  }

  private static int indexOf(long[] costs, long wanted) {
    int i = 0;
    while (costs[i] != wanted) {
      i++;
    }
    return i;
  }
}

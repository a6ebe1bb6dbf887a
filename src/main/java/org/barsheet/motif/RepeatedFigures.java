package org.barsheet.motif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Figures that come at least three times in the lines of a score, ranked by how much shorter the
 * music would be to write if each were written once (minimum description length).
 *
 * <p>Of a figure and its extension by a note the longer one is kept where it comes nearly as often.
 */
final class RepeatedFigures {

  static final int FEWEST_STEPS = 3;
  private static final int MOST_STEPS = 23;
  private static final int FEWEST_TIMES = 3;
  private static final double NEARLY_AS_OFTEN = 0.8;

  /**
   * The low bits of a hash, which give way to the place when both are sorted as one number; a score
   * has at most a million notes. Whole hashes are compared after that.
   */
  private static final long PLACE = (1L << 20) - 1;

  private static final long MULTIPLIER = 0x9E3779B97F4A7C15L;

  /**
   * A figure.
   *
   * @param steps how many steps it has, one fewer than notes
   * @param places indexes in the lines where it begins, in order, without overlap
   * @param bits how unlikely its steps are together
   * @param gain what writing it once saves
   */
  record Figure(int steps, List<Integer> places, double bits, double gain) {
    Figure {
      places = List.copyOf(places);
    }
  }

  private final MelodyLines lines;
  private final Map<Long, Integer> stepCounts = new HashMap<>();

  /** Places where figures of the last length begin, those of one figure together. */
  private final int[] open;

  private int openCount;

  /** Where in {@link #open} the places of each figure begin. */
  private BitSet begins = new BitSet();

  /** The places of one shorter figure, in order of the hashes of the longer ones. */
  private final long[] order;

  private int stepsInAll;

  RepeatedFigures(MelodyLines lines) {
    this.lines = lines;
    this.open = new int[lines.size()];
    this.order = new long[lines.size()];
    for (int i = 0; i < lines.size(); i++) {
      if (lines.reach(i) > 0) {
        stepCounts.merge(lines.step(i), 1, Integer::sum);
        stepsInAll++;
      }
    }
  }

  /** All of them, the most rewarding first. */
  List<Figure> ranked() {
    List<Figure> figures = new ArrayList<>();
    long[] hashes = new long[lines.size()];
    openCount = lines.size();
    Arrays.setAll(open, i -> i);
    begins.set(0);
    List<List<Integer>> shorter = List.of();
    for (int steps = 1; steps <= MOST_STEPS; steps++) {
      long[] before = hashes.clone();
      lengthen(hashes, steps);
      List<List<Integer>> groups = groups(hashes, steps);
      if (steps > FEWEST_STEPS) {
        addClosed(shorter, steps - 1, before, groups, figures);
      }
      shorter = groups;
    }
    addClosed(shorter, MOST_STEPS, hashes, List.of(), figures);
    figures.sort(
        Comparator.comparingDouble((Figure f) -> -f.gain())
            .thenComparingInt(f -> f.places().get(0))
            .thenComparingInt(Figure::steps));
    return figures;
  }

  private void lengthen(long[] hashes, int steps) {
    for (int i = 0; i < hashes.length; i++) {
      if (lines.reach(i) >= steps) {
        hashes[i] = (hashes[i] + lines.step(i + steps - 1) + 1_000_003) * MULTIPLIER;
        hashes[i] ^= hashes[i] >>> 29;
      }
    }
  }

  /**
   * Places with the same steps, those that come often enough. Only places whose shorter figure came
   * often enough are looked at, those of one shorter figure at a time, and the others are
   * forgotten.
   */
  private List<List<Integer>> groups(long[] hashes, int steps) {
    BitSet before = begins;
    int end = openCount;
    begins = new BitSet();
    openCount = 0;
    List<List<Integer>> groups = new ArrayList<>();
    for (int from = before.nextSetBit(0); from >= 0; ) {
      int next = before.nextSetBit(from + 1);
      int count = order(from, next < 0 ? end : next, hashes, steps);
      split(count, hashes, steps, groups);
      from = next;
    }
    return groups;
  }

  /** Puts open places that reach far enough in order of their hashes; returns how many. */
  private int order(int from, int to, long[] hashes, int steps) {
    int count = 0;
    for (int i = from; i < to; i++) {
      if (lines.reach(open[i]) >= steps) {
        order[count++] = (hashes[open[i]] & ~PLACE) | open[i];
      }
    }
    Arrays.sort(order, 0, count);
    return count;
  }

  private void split(int count, long[] hashes, int steps, List<List<Integer>> groups) {
    int from = 0;
    for (int i = 1; i <= count; i++) {
      if (i == count || hashes[place(order[i])] != hashes[place(order[from])]) {
        addGroup(from, i, steps, groups);
        from = i;
      }
    }
  }

  private void addGroup(int from, int to, int steps, List<List<Integer>> groups) {
    if (to - from < FEWEST_TIMES) {
      return;
    }
    List<Integer> places = apart(from, to, steps);
    if (places.size() >= FEWEST_TIMES) {
      groups.add(places);
      begins.set(openCount);
      for (int i = from; i < to; i++) {
        open[openCount++] = place(order[i]);
      }
    }
  }

  private static int place(long ordered) {
    return (int) (ordered & PLACE);
  }

  /** Places that do not overlap, from the first on. */
  private List<Integer> apart(int from, int to, int steps) {
    List<Integer> apart = new ArrayList<>();
    int free = 0;
    for (int i = from; i < to; i++) {
      int place = place(order[i]);
      if (apart.isEmpty() || place >= free) {
        apart.add(place);
        free = place + steps;
      }
    }
    return apart;
  }

  /** Adds the figures of one length that no longer one replaces. */
  private void addClosed(
      List<List<Integer>> groups,
      int steps,
      long[] hashes,
      List<List<Integer>> longer,
      List<Figure> figures) {
    Map<Long, Integer> extended = new HashMap<>();
    for (List<Integer> group : longer) {
      int first = group.get(0);
      extended.merge(hashes[first], group.size(), Math::max);
      extended.merge(hashes[first + 1], group.size(), Math::max);
    }
    for (List<Integer> group : groups) {
      int times = extended.getOrDefault(hashes[group.get(0)], 0);
      if (times < NEARLY_AS_OFTEN * group.size()) {
        figures.add(figure(group, steps));
      }
    }
  }

  /** A figure of so many steps at these places. */
  Figure figure(List<Integer> places, int steps) {
    double bits = 0;
    Set<Long> distinct = new HashSet<>();
    for (int i = places.get(0); i < places.get(0) + steps; i++) {
      long step = lines.step(i);
      distinct.add(step);
      bits -= log2(stepCounts.getOrDefault(step, 1) / (double) stepsInAll);
    }
    double variety = 0.3 + 0.7 * distinct.size() / steps;
    double gain = gain(places.size(), bits * variety);
    return new Figure(steps, places, bits * variety, gain * prominence(places));
  }

  /** More than 1 for figures that set in after rests, as themes do. */
  double prominence(List<Integer> places) {
    long setIn = places.stream().filter(lines::isAfterRest).count();
    return 1 + (double) setIn / places.size();
  }

  /** What writing a figure once saves, if it comes so often, on average. */
  double gain(double times, double bits) {
    return (times - 1) * bits - times * log2(Math.max(2, stepsInAll));
  }

  private static double log2(double x) {
    return Math.log(x) / Math.log(2);
  }
}

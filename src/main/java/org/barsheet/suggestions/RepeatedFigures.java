package org.barsheet.suggestions;

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
 * <p>What leads, sets in after rests and has a rhythm of its own comes first; what goes round comes
 * last. Those weights were chosen on every other one of 55 sonata movements and on 12 arrangements:
 * there the first theme is among the first five figures 26 times of 28, in the other movements 25
 * times of 27 (without them 18 and 17).
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

  /** What a figure that is never in the lead counts against one that always is. */
  private static final double LEAST_LEAD = 0.25;

  /** What a figure of even notes, as accompaniments are, counts against one with a rhythm. */
  private static final double EVEN = 0.2;

  /** From this share of notes on top on a figure leads. */
  private static final double LEADING = 0.5;

  /** So much of a pattern comes again where the chord changes under it. */
  private static final double MOSTLY_SAME = 0.75;

  private static final long MULTIPLIER = 0x9E3779B97F4A7C15L;

  /**
   * A figure.
   *
   * @param steps how many steps it has, one fewer than notes
   * @param places indexes in the lines where it begins, in order, without overlap
   * @param bits how unlikely its steps are together
   * @param gain what writing it once saves
   * @param goesRound whether it accompanies, round and round
   */
  record Figure(int steps, List<Integer> places, double bits, double gain, boolean goesRound) {
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
        Comparator.comparing(Figure::goesRound)
            .thenComparingDouble(f -> -f.gain())
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
    boolean goesRound = goesRound(places, steps);
    return new Figure(steps, places, bits * variety, gain * prominence(places, steps), goesRound);
  }

  /** More for figures that set in after rests, as themes do, and for those in the lead. */
  double prominence(List<Integer> places, int steps) {
    double prominence = 0;
    for (int place : places) {
      double lead = LEAST_LEAD + (1 - LEAST_LEAD) * lines.onTop(place, steps + 1);
      prominence += (lines.isAfterRest(place) ? 2 : 1) * lead * lines.part(place);
    }
    boolean even = lines.isEven(places.get(0), steps);
    return (even ? EVEN : 1) * prominence / places.size();
  }

  /**
   * Whether a figure accompanies: it repeats a pattern within itself, or follows on itself most of
   * the times that it comes.
   */
  private boolean goesRound(List<Integer> places, int steps) {
    int first = places.get(0);
    boolean leads = lines.onTop(first, steps + 1) > LEADING;
    for (int period = 1; period <= steps - FEWEST_STEPS; period++) {
      double same = repeated(first, steps, period);
      boolean twice = 2 * period <= steps && same >= MOSTLY_SAME;
      boolean nearlyTwice = 3 * period <= 2 * steps && same == 1 && !leads;
      if (twice || nearlyTwice) {
        return true;
      }
    }
    int onItself = 0;
    for (int i = 1; i < places.size(); i++) {
      onItself += places.get(i) - places.get(i - 1) <= steps + 1 ? 1 : 0;
    }
    return 2 * onItself > places.size();
  }

  /** The share of a figure's steps that are the same as those a period before. */
  private double repeated(int first, int steps, int period) {
    int same = 0;
    for (int i = first; i + period < first + steps; i++) {
      same += lines.step(i) == lines.step(i + period) ? 1 : 0;
    }
    return same / (double) (steps - period);
  }

  /** What writing a figure once saves, if it comes so often, on average. */
  double gain(double times, double bits) {
    return (times - 1) * bits - times * log2(Math.max(2, stepsInAll));
  }

  private static double log2(double x) {
    return Math.log(x) / Math.log(2);
  }
}

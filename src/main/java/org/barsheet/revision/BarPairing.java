package org.barsheet.revision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The bars of two versions, paired by their notes alone.
 *
 * <p>Bars that stand once in both versions hold everything in place; the bars between two of them
 * are laid against each other ({@link BarWindow}), and what is left over and stands elsewhere note
 * for note has been moved there.
 */
final class BarPairing {

  /** Largest table of bars against bars; beyond it bars are paired from both ends. */
  private static final long MOST_CELLS = 1_500_000;

  private final List<BarContent> before;
  private final List<BarContent> now;
  private final int[] best;
  private final List<List<Integer>> asGood = new ArrayList<>();

  private BarPairing(List<BarContent> before, List<BarContent> now) {
    this.before = before;
    this.now = now;
    this.best = new int[before.size()];
    Arrays.fill(best, BarWindow.NONE);
    before.forEach(bar -> asGood.add(List.of(BarWindow.NONE)));
  }

  static BarPairing of(ScoreNotes before, ScoreNotes now) {
    BarPairing pairing = new BarPairing(BarContent.of(before), BarContent.of(now));
    pairing.pair();
    new MovedBars(pairing.before, pairing.now, pairing.best, pairing.asGood).find();
    new TwinBars(pairing.before, pairing.now, pairing.asGood).find();
    return pairing;
  }

  /** The bar of now that a bar most probably is, or {@link BarWindow#NONE}. */
  int best(int bar) {
    return best[bar];
  }

  /** Every bar of now that it may be as well, {@link BarWindow#NONE} last where it may be gone. */
  List<Integer> asGood(int bar) {
    return asGood.get(bar);
  }

  /** Whether the same notes stand in both; not where one of the two is no bar. */
  boolean isSame(int was, int is) {
    return was >= 0
        && was < before.size()
        && is >= 0
        && is < now.size()
        && before.get(was).equals(now.get(is));
  }

  /** Whether two bars of before had the same notes. */
  boolean wereAlike(int one, int other) {
    return before.get(one).equals(before.get(other));
  }

  /** Whether two bars of now have the same notes. */
  boolean areAlikeNow(int one, int other) {
    return now.get(one).equals(now.get(other));
  }

  /** Whether a bar of now is, note for note, another bar of before than the one given. */
  boolean isAnother(int was, int is) {
    BarContent there = now.get(is);
    return !there.isEmpty()
        && IntStream.range(0, before.size()).anyMatch(i -> i != was && before.get(i).equals(there));
  }

  private void pair() {
    if (before.equals(now)) {
      IntStream.range(0, best.length).forEach(i -> decide(i, i));
      return;
    }
    List<UniqueBars.Pair> all = UniqueBars.of(before, now);
    all.forEach(pair -> decide(pair.was(), pair.is()));
    Set<Integer> taken = all.stream().map(UniqueBars.Pair::is).collect(Collectors.toSet());
    int was = 0;
    int is = 0;
    for (UniqueBars.Pair anchor : UniqueBars.inOrder(all)) {
      window(left(was, anchor.was()), free(is, anchor.is(), taken));
      was = anchor.was() + 1;
      is = anchor.is() + 1;
    }
    window(left(was, before.size()), free(is, now.size(), taken));
  }

  private void decide(int was, int is) {
    best[was] = is;
    asGood.set(was, List.of(is));
  }

  private int[] left(int from, int to) {
    return IntStream.range(from, to).filter(bar -> best[bar] == BarWindow.NONE).toArray();
  }

  private static int[] free(int from, int to, Set<Integer> taken) {
    return IntStream.range(from, to).filter(bar -> !taken.contains(bar)).toArray();
  }

  private void window(int[] was, int[] is) {
    if (was.length == 0 || is.length == 0) {
      return;
    }
    if ((long) was.length * is.length > MOST_CELLS) {
      fromBothEnds(was, is);
      return;
    }
    BarWindow window = new BarWindow(alike(was, is));
    int[] pairs = window.best();
    for (int i = 0; i < pairs.length; i++) {
      best[was[i]] = pairs[i] < 0 ? BarWindow.NONE : is[pairs[i]];
      asGood.set(
          was[i], window.asGood(i).stream().map(j -> j < 0 ? BarWindow.NONE : is[j]).toList());
    }
  }

  private int[][] alike(int[] was, int[] is) {
    int[][] alike = new int[was.length][is.length];
    for (int i = 0; i < was.length; i++) {
      for (int j = 0; j < is.length; j++) {
        alike[i][j] = before.get(was[i]).likeness(now.get(is[j]));
      }
    }
    return alike;
  }

  /** Bars that are the same from the one end, from the other, or from both, which is undecided. */
  private void fromBothEnds(int[] was, int[] is) {
    int both = Math.min(was.length, is.length);
    int head = 0;
    while (head < both && isSame(was[head], is[head])) {
      head++;
    }
    int tail = 0;
    while (tail < both && isSame(was[was.length - 1 - tail], is[is.length - 1 - tail])) {
      tail++;
    }
    for (int k = 0; k < was.length; k++) {
      int fromEnd = is.length - was.length + k;
      List<Integer> found = new ArrayList<>();
      if (k < head || was.length == is.length) {
        found.add(is[k]);
      }
      if (was.length - k <= tail && !found.contains(is[fromEnd])) {
        found.add(is[fromEnd]);
      }
      best[was[k]] = found.isEmpty() ? BarWindow.NONE : found.get(0);
      asGood.set(was[k], found.isEmpty() ? List.of(BarWindow.NONE) : List.copyOf(found));
    }
  }

  /** Bars of now that no bar before most probably is. */
  Set<Integer> added() {
    Set<Integer> added = new HashSet<>();
    IntStream.range(0, now.size()).forEach(added::add);
    Arrays.stream(best).forEach(added::remove);
    return added;
  }
}

package org.barsheet.revision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Bars that are gone from their place and stand, note for note, where there was none of them. */
final class MovedBars {

  /** A bar beside a moved one that is as like as this, in thousandths, has moved with it. */
  private static final int ALIKE = 500;

  private final List<BarContent> before;
  private final List<BarContent> now;
  private final int[] best;
  private final List<List<Integer>> asGood;
  private final Set<Integer> free = new HashSet<>();

  /**
   * Bars paired in order so far.
   *
   * @param best the bar of now for each bar before; filled in where one has moved
   * @param asGood what each bar may be; filled in likewise
   */
  MovedBars(List<BarContent> before, List<BarContent> now, int[] best, List<List<Integer>> asGood) {
    this.before = before;
    this.now = now;
    this.best = best;
    this.asGood = asGood;
    for (int j = 0; j < now.size(); j++) {
      free.add(j);
    }
    for (int paired : best) {
      free.remove(paired);
    }
  }

  void find() {
    for (int i = 0; i < best.length; i++) {
      if (best[i] != BarWindow.NONE) {
        neighbors(i, best[i]);
      }
    }
    Map<BarContent, List<Integer>> places = places();
    for (int i = 0; i < best.length; i++) {
      List<Integer> found = places.getOrDefault(before.get(i), List.of());
      if (isGone(i) && found.size() == 1 && free.contains(found.get(0))) {
        move(i, found.get(0));
        neighbors(i, found.get(0));
      } else if (isGone(i) && !found.isEmpty()) {
        List<Integer> perhaps = new ArrayList<>(found);
        perhaps.add(BarWindow.NONE);
        asGood.set(i, List.copyOf(perhaps));
      }
    }
  }

  /** Where music stands that no bar, or not surely one, is found again in. */
  private Map<BarContent, List<Integer>> places() {
    Set<Integer> open = new TreeSet<>(free);
    asGood.stream().filter(bars -> bars.size() > 1).forEach(open::addAll);
    open.remove(BarWindow.NONE);
    Map<BarContent, List<Integer>> places = new HashMap<>();
    for (int j : open) {
      if (!now.get(j).isEmpty()) {
        places.computeIfAbsent(now.get(j), bar -> new ArrayList<>()).add(j);
      }
    }
    return places;
  }

  private boolean isGone(int bar) {
    return asGood.get(bar).equals(List.of(BarWindow.NONE));
  }

  private void move(int was, int is) {
    best[was] = is;
    asGood.set(was, List.of(is));
    free.remove(is);
  }

  /** Bars beside a moved one have moved with it, even where they stand more than once. */
  private void neighbors(int was, int is) {
    neighbors(was, is, 1);
    neighbors(was, is, -1);
  }

  private void neighbors(int was, int is, int step) {
    int i = was + step;
    int j = is + step;
    while (i >= 0
        && i < best.length
        && isGone(i)
        && free.contains(j)
        && before.get(i).likeness(now.get(j)) >= ALIKE) {
      move(i, j);
      i += step;
      j += step;
    }
  }
}

package org.barsheet.revision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Bars that have come loose from a neighbor and stand once more, note for note, where there was
 * none of them: either may be the one there was.
 */
final class TwinBars {

  private final List<BarContent> before;
  private final List<BarContent> now;
  private final List<List<Integer>> asGood;
  private final Map<BarContent, List<Integer>> added = new HashMap<>();

  /**
   * Bars paired so far.
   *
   * @param asGood what each bar may be; filled in where it may be a twin as well
   */
  TwinBars(List<BarContent> before, List<BarContent> now, List<List<Integer>> asGood) {
    this.before = before;
    this.now = now;
    this.asGood = asGood;
    Set<Integer> free = new TreeSet<>();
    for (int j = 0; j < now.size(); j++) {
      free.add(j);
    }
    asGood.forEach(free::removeAll);
    for (int j : free) {
      if (!now.get(j).isEmpty()) {
        added.computeIfAbsent(now.get(j), bar -> new ArrayList<>()).add(j);
      }
    }
  }

  void find() {
    for (int first = 0; first < before.size(); first++) {
      int last = first;
      while (hasTwin(last) && hasTwin(last + 1) && follows(last)) {
        last++;
      }
      if (hasTwin(first)) {
        if (!(follows(first - 1) && follows(last))) {
          decideNot(first, last);
        }
        first = last;
      }
    }
  }

  private boolean hasTwin(int bar) {
    return bar < before.size()
        && asGood.get(bar).size() == 1
        && added.containsKey(before.get(bar))
        && now.get(Math.max(0, asGood.get(bar).get(0))).equals(before.get(bar));
  }

  /** Whether the bar behind one stands behind it now as well; nothing lies beyond the ends. */
  private boolean follows(int bar) {
    int here = bar < 0 ? BarWindow.NONE : sure(bar);
    int next = bar + 1 == before.size() ? now.size() : sure(bar + 1);
    return next == here + 1 && (bar < 0 || here >= 0);
  }

  private int sure(int bar) {
    return asGood.get(bar).size() == 1 ? asGood.get(bar).get(0) : BarWindow.NONE;
  }

  private void decideNot(int first, int last) {
    int place = sure(first);
    for (int twin : added.getOrDefault(before.get(first), List.of())) {
      boolean all = true;
      for (int k = 1; k <= last - first; k++) {
        all &= added.getOrDefault(before.get(first + k), List.of()).contains(twin + k);
      }
      for (int k = 0; all && k <= last - first; k++) {
        Set<Integer> either = new TreeSet<>(asGood.get(first + k));
        either.add(place + k);
        either.add(twin + k);
        asGood.set(first + k, List.copyOf(either));
      }
    }
  }
}

package org.barsheet.revision;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Bars that stand once in both versions: where they follow in order, nothing is to be decided. */
final class UniqueBars {

  /**
   * A bar and the bar it is.
   *
   * @param was index before
   * @param is index now
   */
  record Pair(int was, int is) {}

  private UniqueBars() {}

  /** All of them, in the order of the version before. */
  static List<Pair> of(List<BarContent> before, List<BarContent> now) {
    Map<BarContent, Integer> was = places(before);
    Map<BarContent, Integer> is = places(now);
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      BarContent bar = before.get(i);
      int there = is.getOrDefault(bar, BarWindow.NONE);
      if (!bar.isEmpty() && was.getOrDefault(bar, BarWindow.NONE) == i && there >= 0) {
        pairs.add(new Pair(i, there));
      }
    }
    return pairs;
  }

  /** Where a bar stands that stands once only; {@link BarWindow#NONE} for one that stands twice. */
  private static Map<BarContent, Integer> places(List<BarContent> bars) {
    Map<BarContent, Integer> places = new HashMap<>();
    for (int i = 0; i < bars.size(); i++) {
      places.merge(bars.get(i), i, (one, other) -> BarWindow.NONE);
    }
    return places;
  }

  /** The longest run of pairs that follow one another in both versions (patience sorting). */
  static List<Pair> inOrder(List<Pair> pairs) {
    List<Integer> tops = new ArrayList<>();
    int[] below = new int[pairs.size()];
    for (int k = 0; k < pairs.size(); k++) {
      int low = 0;
      int high = tops.size();
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (pairs.get(tops.get(middle)).is() < pairs.get(k).is()) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      below[k] = low == 0 ? BarWindow.NONE : tops.get(low - 1);
      if (low == tops.size()) {
        tops.add(k);
      } else {
        tops.set(low, k);
      }
    }
    List<Pair> rising = new ArrayList<>();
    for (int k = tops.isEmpty() ? BarWindow.NONE : tops.get(tops.size() - 1);
        k >= 0;
        k = below[k]) {
      rising.add(pairs.get(k));
    }
    Collections.reverse(rising);
    return rising;
  }
}

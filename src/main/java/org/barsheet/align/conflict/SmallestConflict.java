package org.barsheet.align.conflict;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Finds a smallest set of wishes that cannot be kept together: dropping any one of them makes the
 * rest possible (QuickXplain: Junker, "QUICKXPLAIN: Preferred Explanations and Relaxations for
 * Over-Constrained Problems", AAAI 2004).
 */
final class SmallestConflict<T> {

  private final Predicate<List<T>> possible;

  private SmallestConflict(Predicate<List<T>> possible) {
    this.possible = possible;
  }

  /**
   * A smallest conflict among wishes that are not possible together.
   *
   * @param wishes those kept rather than blamed first
   * @param possible whether some wishes can be kept together; fewer wishes are never harder
   */
  static <T> List<T> among(List<T> wishes, Predicate<List<T>> possible) {
    return new SmallestConflict<T>(possible).explain(List.of(), false, wishes);
  }

  private List<T> explain(List<T> kept, boolean added, List<T> open) {
    if (added && !possible.test(kept)) {
      return List.of();
    }
    if (open.size() == 1) {
      return open;
    }
    int half = open.size() / 2;
    List<T> first = open.subList(0, half);
    List<T> second = open.subList(half, open.size());
    List<T> fromSecond = explain(join(kept, first), true, second);
    List<T> fromFirst = explain(join(kept, fromSecond), !fromSecond.isEmpty(), first);
    return join(fromFirst, fromSecond);
  }

  private static <T> List<T> join(List<T> one, List<T> other) {
    List<T> both = new ArrayList<>(one);
    both.addAll(other);
    return List.copyOf(both);
  }
}

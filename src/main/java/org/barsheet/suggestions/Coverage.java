package org.barsheet.suggestions;

import java.util.Comparator;
import java.util.List;
import org.barsheet.motif.Sounding;

/** Tells whether returns of one motif lie within those of another, without comparing all pairs. */
final class Coverage {

  private final List<Sounding> ordered;
  private final long longest;

  Coverage(List<Sounding> returns) {
    ordered = returns.stream().sorted(Comparator.comparingLong(Sounding::startTick)).toList();
    longest = returns.stream().mapToLong(Sounding::length).max().orElse(0);
  }

  /** Whether one of the returns sounds during at least half of another motif's. */
  boolean covers(Sounding other) {
    for (int i = from(other.startTick() - longest); i < ordered.size(); i++) {
      if (ordered.get(i).startTick() >= other.endTick()) {
        return false;
      }
      if (2 * ordered.get(i).shared(other) >= other.length()) {
        return true;
      }
    }
    return false;
  }

  /** The first that begins at or after a tick. */
  private int from(long tick) {
    int low = 0;
    int high = ordered.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (ordered.get(middle).startTick() < tick) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}

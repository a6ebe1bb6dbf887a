package org.barsheet.motif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes returns of chains: of chains over the same notes the best is left; chains that begin
 * together in one form are one return with doublings. A stretto, entries a little apart on notes of
 * their own, stays apart.
 */
final class HitMerger {

  private final NoteField field;
  private final long together;
  private final List<Chain> kept = new ArrayList<>();
  private final Map<Integer, List<Integer>> keptByNote = new HashMap<>();

  /**
   * Prepares a merger.
   *
   * @param together within how many ticks two beginnings are one
   */
  HitMerger(NoteField field, long together) {
    this.field = field;
    this.together = together;
  }

  /** The returns among these chains, in order of start. */
  List<Hit> merge(List<Chain> chains) {
    List<Chain> ordered = new ArrayList<>(chains);
    ordered.sort(
        Comparator.comparingInt(Certainties::damage)
            .thenComparing(Comparator.comparingInt((Chain c) -> c.notes().present()).reversed())
            .thenComparingInt(c -> c.pattern().transform().changes())
            .thenComparingLong(Chain::start)
            .thenComparing(Comparator.comparingInt(this::firstPitch).reversed()));
    ordered.forEach(this::keepUnlessCovered);
    return grouped();
  }

  private int firstPitch(Chain chain) {
    return field.pitch(chain.notes().get(chain.notes().firstPresent()));
  }

  /** Keeps a chain unless a better one holds at least half of its notes. */
  private void keepUnlessCovered(Chain chain) {
    Map<Integer, Integer> shared = new HashMap<>();
    for (int i = 0; i < chain.notes().size(); i++) {
      for (int other : keptByNote.getOrDefault(chain.notes().get(i), List.of())) {
        if (2 * shared.merge(other, 1, Integer::sum) >= chain.notes().present()) {
          return;
        }
      }
    }
    for (int i = 0; i < chain.notes().size(); i++) {
      if (chain.notes().has(i)) {
        keptByNote.computeIfAbsent(chain.notes().get(i), n -> new ArrayList<>()).add(kept.size());
      }
    }
    kept.add(chain);
  }

  private List<Hit> grouped() {
    List<List<Chain>> groups = new ArrayList<>();
    List<Chain> byStart = new ArrayList<>(kept);
    byStart.sort(Comparator.comparingLong(Chain::start));
    int from = 0;
    for (Chain chain : byStart) {
      while (from < groups.size() && isBefore(groups.get(from), chain)) {
        from++;
      }
      join(groups.subList(from, groups.size()), groups, chain);
    }
    return groups.stream().map(HitMerger::hit).toList();
  }

  private boolean isBefore(List<Chain> group, Chain chain) {
    return group.get(0).start() < chain.start() - together;
  }

  private static void join(List<List<Chain>> near, List<List<Chain>> all, Chain chain) {
    for (List<Chain> group : near) {
      if (group.get(0).pattern().transform().equals(chain.pattern().transform())) {
        group.add(chain);
        return;
      }
    }
    all.add(new ArrayList<>(List.of(chain)));
  }

  private static Hit hit(List<Chain> group) {
    group.sort(Comparator.comparingInt(Certainties::damage));
    return new Hit(group.get(0), group.subList(1, group.size()));
  }
}

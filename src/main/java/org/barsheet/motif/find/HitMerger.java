package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.KeptNotes;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Transform;

/**
 * Makes returns of chains: of chains over the same notes the best is left; chains that begin
 * together in one form are one return with doublings. A stretto, entries a little apart on notes of
 * their own, stays apart.
 */
final class HitMerger {

  private static final int BEGINS_TOGETHER = 8;

  private final NoteField field;
  private final BiPredicate<Chain, Chain> together;
  private final List<Chain> kept = new ArrayList<>();
  private final KeptNotes keptNotes;

  /**
   * Prepares a merger.
   *
   * @param together whether two chains begin at one moment
   */
  HitMerger(NoteField field, BiPredicate<Chain, Chain> together) {
    this.field = field;
    this.keptNotes = new KeptNotes(field.size());
    this.together = together;
  }

  /** A merger for music as written: what begins within 1/8 of a quarter note begins together. */
  static HitMerger ofWritten(NoteField field, int ticksPerQuarter) {
    int together = ticksPerQuarter / BEGINS_TOGETHER;
    return new HitMerger(
        field, (chain, other) -> Math.abs(chain.start() - other.start()) <= together);
  }

  /**
   * The returns among these chains, in order of start.
   *
   * @param chains of the whole motif
   * @param variants ornamented and shortened; they count only where no whole one stands
   */
  List<Hit> merge(List<Chain> chains, List<Chain> variants) {
    ordered(chains).forEach(this::keepUnlessCovered);
    ordered(variants).forEach(this::keepUnlessCovered);
    return grouped();
  }

  /** The best first. */
  private List<Chain> ordered(List<Chain> chains) {
    List<Chain> ordered = new ArrayList<>(chains);
    ordered.sort(
        Comparator.comparingInt(Certainties::damage)
            .thenComparing(Comparator.comparingInt((Chain c) -> c.notes().present()).reversed())
            .thenComparingInt(c -> c.pattern().transform().changes())
            .thenComparingLong(Chain::start)
            .thenComparing(Comparator.comparingInt(this::firstPitch).reversed()));
    return ordered;
  }

  private int firstPitch(Chain chain) {
    return field.pitch(chain.notes().get(chain.notes().firstPresent()));
  }

  /** Keeps a chain unless a better one holds at least half of its notes. */
  private void keepUnlessCovered(Chain chain) {
    if (2 * keptNotes.mostShared(chain.notes()) < chain.notes().present()) {
      keptNotes.add(chain.notes());
      kept.add(chain);
    }
  }

  private List<Hit> grouped() {
    List<List<Chain>> groups = new ArrayList<>();
    kept.sort(Comparator.comparingLong(Chain::start));
    for (Chain chain : kept) {
      group(groups, chain).add(chain);
    }
    return groups.stream().map(HitMerger::hit).toList();
  }

  /** The group that a chain belongs to, one of the last, or a new one. */
  private List<Chain> group(List<List<Chain>> groups, Chain chain) {
    Transform transform = chain.pattern().transform();
    for (int i = groups.size() - 1; i >= 0; i--) {
      Chain first = groups.get(i).get(0);
      if (!together.test(first, chain)) {
        break;
      }
      if (first.pattern().transform().equals(transform)) {
        return groups.get(i);
      }
    }
    List<Chain> group = new ArrayList<>();
    groups.add(group);
    return group;
  }

  private static Hit hit(List<Chain> group) {
    group.sort(
        Comparator.comparing((Chain chain) -> chain.pattern().variant().isPresent())
            .thenComparingInt(Certainties::damage));
    return new Hit(group.get(0), group.subList(1, group.size()));
  }
}

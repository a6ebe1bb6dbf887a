package org.barsheet.revision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.revision.Fate.Gone;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.Fate.Undecided;

/** Returns of two versions, paired by the bars, notes and parts they are made of. */
final class ReturnPairing {

  private static final double SAME_NOTES = 0.5;
  private static final double SAME_ONSETS = 0.4;
  private static final double SAME_PARTS = 0.1;

  /** A return less alike than this is another one. */
  private static final double LEAST = 0.3;

  /** Two that differ by less cannot be told apart. */
  private static final double APART = 0.05;

  private final Revision revision;
  private final List<HeldReturn> was;
  private final List<HeldReturn> is;
  private final PartNames parts;

  /**
   * A pair.
   *
   * @param was index before
   * @param is index now
   * @param alike 0 to 1
   */
  private record Pair(int was, int is, double alike) {}

  ReturnPairing(Revision revision, List<HeldReturn> was, List<HeldReturn> is) {
    this.revision = revision;
    this.was = was;
    this.is = is;
    this.parts = PartNames.of(revision.before(), revision.now());
  }

  List<Fate<HeldReturn>> fates() {
    List<Pair> pairs = pairs();
    Map<Integer, Pair> paired = bestFirst(pairs);
    List<Fate<HeldReturn>> fates = new ArrayList<>();
    for (int i = 0; i < was.size(); i++) {
      Pair pair = paired.get(i);
      fates.add(pair == null ? new Gone<>() : fate(pair, pairs));
    }
    return fates;
  }

  private Fate<HeldReturn> fate(Pair best, List<Pair> pairs) {
    List<HeldReturn> asGood =
        pairs.stream()
            .filter(pair -> pair.was() == best.was() && pair.alike() > best.alike() - APART)
            .map(pair -> is.get(pair.is()))
            .toList();
    Fate<BigFraction> start = revision.ofUnits(start(was.get(best.was())));
    if (start instanceof Undecided<BigFraction> undecided && asGood.size() > 1) {
      return new Undecided<>(asGood, undecided.perhapsGone());
    }
    HeldReturn now = is.get(best.is());
    boolean changed = share(notes(was.get(best.was())), Set.copyOf(now.notes())) < 1;
    return new Kept<>(now, changed);
  }

  private static BigFraction start(HeldReturn held) {
    return BigFraction.of(held.notes().isEmpty() ? 0 : held.notes().get(0).at());
  }

  private List<Pair> pairs() {
    Map<String, List<Integer>> byMotif = new HashMap<>();
    for (int j = 0; j < is.size(); j++) {
      byMotif.computeIfAbsent(is.get(j).motif(), motif -> new ArrayList<>()).add(j);
    }
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < was.size(); i++) {
      Set<BarNote> notes = notes(was.get(i));
      for (int j : byMotif.getOrDefault(was.get(i).motif(), List.of())) {
        double alike = alike(notes, was.get(i), is.get(j));
        if (alike >= LEAST) {
          pairs.add(new Pair(i, j, alike));
        }
      }
    }
    return pairs;
  }

  /** The notes of a return where they may stand now, unchanged in pitch. */
  private Set<BarNote> notes(HeldReturn held) {
    Set<BarNote> moved = new HashSet<>();
    for (BarNote note : held.notes()) {
      for (BigFraction at : revision.ofUnits(BigFraction.of(note.at())).possible()) {
        moved.add(new BarNote(at.longValue(), note.pitch()));
      }
    }
    return moved;
  }

  private double alike(Set<BarNote> notes, HeldReturn before, HeldReturn now) {
    boolean sameParts =
        now.parts().stream()
            .anyMatch(part -> before.parts().stream().anyMatch(old -> parts.now(old).equals(part)));
    double onsets = share(onsets(notes), onsets(Set.copyOf(now.notes())));
    return onsets == 0
        ? 0
        : SAME_NOTES * share(notes, Set.copyOf(now.notes()))
            + SAME_ONSETS * onsets
            + (sameParts ? SAME_PARTS : 0);
  }

  private static Set<Long> onsets(Set<BarNote> notes) {
    return notes.stream().map(BarNote::at).collect(Collectors.toSet());
  }

  /** Of the smaller set, how much is in the other: a bar that may be two bars counts once. */
  private static <T> double share(Set<T> one, Set<T> other) {
    Set<T> small = one.size() <= other.size() ? one : other;
    Set<T> large = small == one ? other : one;
    long common = small.stream().filter(large::contains).count();
    return small.isEmpty() ? 0 : (double) common / small.size();
  }

  /** The pair most alike first, then the next of those still free. */
  private Map<Integer, Pair> bestFirst(List<Pair> pairs) {
    List<Pair> sorted = new ArrayList<>(pairs);
    sorted.sort(
        Comparator.comparingDouble(Pair::alike)
            .reversed()
            .thenComparingInt(Pair::was)
            .thenComparingInt(Pair::is));
    Map<Integer, Pair> paired = new HashMap<>();
    Set<Integer> taken = new HashSet<>();
    for (Pair pair : sorted) {
      if (!paired.containsKey(pair.was()) && taken.add(pair.is())) {
        paired.put(pair.was(), pair);
      }
    }
    return paired;
  }
}

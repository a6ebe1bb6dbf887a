package org.barsheet.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.barsheet.cues.Cue;

/**
 * Keeps panels that are not neighbours from sitting on one cue. That can only happen on a long
 * return: one panel sits on its first note, the next lies within it, and a third lands on its
 * accent. So that the aligner need only look at neighbours, a place there is told apart by the cues
 * that panels before it hold.
 */
final class SharedCues {

  private final List<List<Candidate>> places;
  private final Map<String, long[]> latestCuts = new HashMap<>();
  private final boolean any;

  /**
   * Cues of a plan.
   *
   * @param places of every panel, each in order of cut
   */
  SharedCues(List<List<Candidate>> places) {
    this.places = List.copyOf(places);
    for (int p = places.size() - 1; p >= 0; p--) {
      for (Candidate place : places.get(p)) {
        if (place.cue().kind() == Cue.Kind.OCCURRENCE) {
          long[] latest = latestCuts.computeIfAbsent(place.cue().id(), id -> noCuts());
          latest[p] = Math.max(latest[p], place.cut());
        }
      }
    }
    for (long[] latest : latestCuts.values()) {
      for (int p = latest.length - 2; p >= 0; p--) {
        latest[p] = Math.max(latest[p], latest[p + 1]);
      }
    }
    this.any =
        IntStream.range(0, places.size())
            .anyMatch(p -> places.get(p).stream().anyMatch(place -> holds(p, place)));
  }

  /** Whether a panel after the next one could sit on the cue of a place, too. */
  private boolean holds(int panel, Candidate place) {
    return place.cue().kind() == Cue.Kind.OCCURRENCE
        && isWanted(place.cue().id(), panel + 2, place.cut());
  }

  /** One more than there are panels: none comes after the last. */
  private long[] noCuts() {
    long[] latest = new long[places.size() + 2];
    Arrays.fill(latest, Candidate.ANY);
    return latest;
  }

  /** The cues that a place, or a panel before it, holds against panels after the next one. */
  Set<String> carried(int panel, Candidate place) {
    boolean holds = any && holds(panel, place);
    if (!holds && place.held().isEmpty()) {
      return Set.of();
    }
    Set<String> all = new LinkedHashSet<>(place.held());
    if (holds) {
      all.add(place.cue().id());
    }
    return stillHeld(panel + 1, place.cut(), all);
  }

  /** Those of some held cues that a panel after one might take, if that one begins on a frame. */
  Set<String> stillHeld(int panel, long cut, Set<String> held) {
    return held.stream()
        .filter(id -> isWanted(id, panel + 1, cut))
        .collect(Collectors.toUnmodifiableSet());
  }

  private boolean isWanted(String id, int fromPanel, long afterCut) {
    long[] latest = latestCuts.get(id);
    return latest != null && latest[fromPanel] > afterCut;
  }

  /** The places of every panel, those told apart that can be reached with other cues held. */
  List<List<Candidate>> toldApart() {
    if (!any) {
      return places;
    }
    List<List<Candidate>> all = new ArrayList<>();
    Map<Set<String>, Long> before = Map.of(Set.of(), Long.MIN_VALUE);
    for (int p = 0; p < places.size(); p++) {
      List<Candidate> here = new ArrayList<>();
      for (Candidate place : places.get(p)) {
        here.addAll(toldApart(p, place, before));
      }
      all.add(List.copyOf(here));
      before = carriedFrom(p, here);
    }
    return List.copyOf(all);
  }

  private List<Candidate> toldApart(int p, Candidate place, Map<Set<String>, Long> before) {
    Set<Set<String>> ways = new LinkedHashSet<>();
    before.forEach(
        (held, cut) -> {
          if (cut < place.cut()) {
            ways.add(held.isEmpty() ? held : stillHeld(p, place.cut(), held));
          }
        });
    return ways.isEmpty() ? List.of(place) : ways.stream().map(place::holding).toList();
  }

  /** Each set of cues that can be held after a panel, with the earliest cut that holds it. */
  private Map<Set<String>, Long> carriedFrom(int p, List<Candidate> here) {
    Map<Set<String>, Long> carried = new LinkedHashMap<>();
    here.forEach(place -> carried.merge(carried(p, place), place.cut(), Math::min));
    return carried;
  }
}

package org.barsheet.align;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.barsheet.align.places.Candidate;
import org.barsheet.cues.Cue;

/**
 * Keeps panels that are not neighbors from sitting on one cue. That can only happen on a long
 * return: one panel sits on its first note, the next lies within it, and a third lands on its
 * accent. So that the aligner need only look at neighbors, a place there is told apart by the cues
 * that panels before it hold.
 */
final class SharedCues {

  /** A panel and the latest cut that it or one after it can take on a cue. */
  private record Latest(int panel, long cut) {}

  /**
   * Cues that may be held before a panel.
   *
   * @param order in which they were found
   * @param held the cues
   * @param from the earliest cut that holds them
   * @param until the cut from which on none of them is wanted any more
   */
  private record Held(int order, Set<String> held, long from, long until) {}

  private final List<List<Candidate>> places;
  private final Map<String, List<Latest>> latestCuts = new HashMap<>();
  private final boolean[] tellsApart;

  /**
   * Cues of a plan.
   *
   * @param places of every panel, each in order of cut
   * @param lists those the places were taken from, each once
   */
  SharedCues(List<List<Candidate>> places, Set<List<Candidate>> lists) {
    this.places = List.copyOf(places);
    this.tellsApart = new boolean[places.size()];
    if (anyHeld(lists)) {
      noteAll();
    }
  }

  private void noteAll() {
    for (int p = places.size() - 1; p >= 0; p--) {
      for (Candidate place : places.get(p)) {
        if (place.cue().kind() == Cue.Kind.RETURN) {
          note(p, place);
        }
      }
    }
    for (int p = 0; p < places.size(); p++) {
      int panel = p;
      tellsApart[p] = places.get(p).stream().anyMatch(place -> holds(panel, place));
    }
  }

  /** Whether a shot that sits on a cue can end before another place on that cue at all. */
  private static boolean anyHeld(Set<List<Candidate>> lists) {
    Map<String, Long> latest = new HashMap<>();
    lists.forEach(
        list ->
            list.stream()
                .filter(place -> place.cue().kind() == Cue.Kind.RETURN)
                .forEach(place -> latest.merge(place.cue().id(), place.cut(), Math::max)));
    return lists.stream()
        .flatMap(List::stream)
        .anyMatch(place -> endsBefore(place, latest.getOrDefault(place.cue().id(), Candidate.ANY)));
  }

  private static boolean endsBefore(Candidate place, long latest) {
    return latest > place.cut() && place.earliestEnd().filter(end -> latest > end).isPresent();
  }

  /** The latest cuts of a cue grow from the last panel to the first. */
  private void note(int panel, Candidate place) {
    List<Latest> latest = latestCuts.computeIfAbsent(place.cue().id(), id -> new ArrayList<>(1));
    int last = latest.size() - 1;
    if (last < 0 || latest.get(last).cut() < place.cut()) {
      if (last >= 0 && latest.get(last).panel() == panel) {
        latest.remove(last);
      }
      latest.add(new Latest(panel, place.cut()));
    }
  }

  /**
   * Whether a panel after the next one could sit on the cue of a place, too: it begins after the
   * next one, which begins where the shot of this one may end.
   */
  private boolean holds(int panel, Candidate place) {
    if (place.cue().kind() != Cue.Kind.RETURN) {
      return false;
    }
    return endsBefore(place, latestCut(place.cue().id(), panel + 2));
  }

  /** The latest cut that a panel or one after it can take on a cue. */
  private long latestCut(String id, int fromPanel) {
    List<Latest> latest = latestCuts.getOrDefault(id, List.of());
    for (int i = latest.size() - 1; i >= 0; i--) {
      if (latest.get(i).panel() >= fromPanel) {
        return latest.get(i).cut();
      }
    }
    return Candidate.ANY;
  }

  /** Whether some place of a panel holds cues, its own or those of panels before. */
  boolean tellsApart(int panel) {
    return tellsApart[panel];
  }

  /** The cues that a place, or a panel before it, holds against panels after the next one. */
  Set<String> carried(int panel, Candidate place) {
    boolean holds = holds(panel, place);
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
        .filter(id -> latestCut(id, panel + 1) > cut)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The cut of a panel from which on no panel after it might take any of some held cues. */
  long heldUntil(int panel, Set<String> held) {
    return held.stream().mapToLong(id -> latestCut(id, panel + 1)).max().orElse(Long.MIN_VALUE);
  }

  /**
   * The places of every panel, those told apart that can be reached with other cues held. Lists
   * that stay as they are, are the same lists.
   */
  List<List<Candidate>> toldApart() {
    List<List<Candidate>> all = new ArrayList<>();
    Map<Set<String>, Long> before = Map.of(Set.of(), Long.MIN_VALUE);
    for (int p = 0; p < places.size(); p++) {
      List<Candidate> here = toldApart(p, before);
      tellsApart[p] |= here != places.get(p);
      all.add(here);
      before = tellsApart[p] ? carriedFrom(p, here) : nothingCarried(here);
    }
    return List.copyOf(all);
  }

  private List<Candidate> toldApart(int p, Map<Set<String>, Long> before) {
    List<Held> coming = coming(p, before);
    if (coming.stream().allMatch(held -> held.held().isEmpty())) {
      return places.get(p);
    }
    List<Candidate> here = new ArrayList<>();
    TreeMap<Integer, Held> now = new TreeMap<>();
    int firstFree = Integer.MAX_VALUE;
    int next = 0;
    boolean any = false;
    for (Candidate place : places.get(p)) {
      for (; next < coming.size() && coming.get(next).from() < place.cut(); next++) {
        now.put(coming.get(next).order(), coming.get(next));
      }
      for (Held over : now.values().stream().filter(h -> h.until() <= place.cut()).toList()) {
        now.remove(over.order());
        firstFree = Math.min(firstFree, over.order());
      }
      any |= !now.isEmpty();
      ways(p, place.cut(), now, firstFree).forEach(held -> here.add(place.holding(held)));
    }
    return any ? List.copyOf(here) : places.get(p);
  }

  /** The cues held before a panel, by the cut that holds them. */
  private List<Held> coming(int p, Map<Set<String>, Long> before) {
    List<Held> coming = new ArrayList<>();
    before.forEach(
        (held, cut) -> coming.add(new Held(coming.size(), held, cut, heldUntil(p, held))));
    coming.sort(Comparator.comparingLong(Held::from));
    return coming;
  }

  /** The different cues that can be held when a panel begins on a frame, as they were found. */
  private Set<Set<String>> ways(int p, long cut, NavigableMap<Integer, Held> now, int firstFree) {
    Set<Set<String>> ways = new LinkedHashSet<>();
    now.headMap(firstFree, false)
        .values()
        .forEach(held -> ways.add(stillHeld(p, cut, held.held())));
    if (firstFree < Integer.MAX_VALUE || now.isEmpty()) {
      ways.add(Set.of());
    }
    now.tailMap(firstFree, true).values().forEach(held -> ways.add(stillHeld(p, cut, held.held())));
    return ways;
  }

  private static Map<Set<String>, Long> nothingCarried(List<Candidate> here) {
    return here.isEmpty() ? Map.of() : Map.of(Set.of(), here.get(0).cut());
  }

  /** Each set of cues that can be held after a panel, with the earliest cut that holds it. */
  private Map<Set<String>, Long> carriedFrom(int p, List<Candidate> here) {
    Map<Set<String>, Long> carried = new LinkedHashMap<>();
    here.forEach(place -> carried.merge(carried(p, place), place.cut(), Math::min));
    return carried;
  }
}

package org.barsheet.changes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.revision.Fate;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.Fate.Undecided;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.Revision;

/**
 * Returns and marks of two runs: a return is known by the notes it is made of, a mark by its name.
 * Of a run whose notes were not kept, a return is known only where it stands in the same place.
 */
final class CuePairing {

  private final List<LaidCue> before;
  private final List<LaidCue> now;
  private final Optional<Revision> revision;

  /** Cues of now that no cue before is yet, in order of time. */
  private final Set<LaidCue> left;

  private final Map<LaidCue, CueChange> found = new LinkedHashMap<>();

  private CuePairing(List<LaidCue> before, List<LaidCue> now, Optional<Revision> revision) {
    this.before = before.stream().filter(LaidCue::isLasting).toList();
    this.now = now.stream().filter(LaidCue::isLasting).toList();
    this.revision = revision;
    this.left = new LinkedHashSet<>(this.now);
  }

  /** Every return and every mark of both runs, in order of time. */
  static List<CueChange> all(List<LaidCue> before, List<LaidCue> now, Optional<Revision> revision) {
    CuePairing pairing = new CuePairing(before, now, revision);
    pairing.byNotes();
    pairing.byPlace();
    return pairing.inOrder();
  }

  private void byNotes() {
    List<LaidCue> was = before.stream().filter(cue -> cue.held().isPresent()).toList();
    List<LaidCue> is = now.stream().filter(cue -> cue.held().isPresent()).toList();
    if (revision.isEmpty()) {
      return;
    }
    Map<HeldReturn, LaidCue> cues = new LinkedHashMap<>();
    is.forEach(cue -> cues.put(held(cue), cue));
    List<Fate<HeldReturn>> fates =
        revision
            .get()
            .ofReturns(was.stream().map(CuePairing::held).toList(), List.copyOf(cues.keySet()));
    for (int i = 0; i < was.size(); i++) {
      pair(was.get(i), fates.get(i), cues);
    }
  }

  private static HeldReturn held(LaidCue cue) {
    return cue.held().orElseThrow();
  }

  private void pair(LaidCue cue, Fate<HeldReturn> fate, Map<HeldReturn, LaidCue> cues) {
    if (fate instanceof Kept<HeldReturn> kept) {
      keep(cue, Objects.requireNonNull(cues.get(kept.now())));
    } else if (fate instanceof Undecided<HeldReturn> undecided) {
      List<LaidCue> perhaps =
          undecided.candidates().stream().map(cues::get).filter(Objects::nonNull).toList();
      perhaps.forEach(left::remove);
      found.put(cue, CueChange.undecided(cue, perhaps));
    } else {
      found.put(cue, CueChange.gone(cue));
    }
  }

  private void keep(LaidCue was, LaidCue is) {
    left.remove(is);
    found.put(was, CueChange.kept(was, is));
  }

  private void byPlace() {
    for (LaidCue cue : before) {
      if (!found.containsKey(cue)) {
        left.stream()
            .filter(other -> other.kind().equals(cue.kind()) && other.name().equals(cue.name()))
            .filter(other -> !cue.isOccurrence() || cue.hasPlaceOf(other))
            .findFirst()
            .ifPresentOrElse(other -> keep(cue, other), () -> found.put(cue, CueChange.gone(cue)));
      }
    }
  }

  /** In the order of now; what is gone stands behind what it stood behind. */
  private List<CueChange> inOrder() {
    Map<CueChange, Integer> order = new HashMap<>();
    int last = -1;
    for (LaidCue cue : before) {
      CueChange change = Objects.requireNonNull(found.get(cue));
      last = change.now().map(now::indexOf).orElse(last);
      order.put(change, 2 * last + (change.now().isPresent() ? 0 : 1));
    }
    List<CueChange> all = new ArrayList<>(found.values());
    for (LaidCue cue : left) {
      CueChange added = CueChange.added(cue);
      order.put(added, 2 * now.indexOf(cue));
      all.add(added);
    }
    all.sort(Comparator.comparing(order::get));
    return List.copyOf(all);
  }
}

package org.barsheet.ticks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the photographs of ticks again, under other names where the plan has changed. */
final class Matching {

  private final Map<String, String> now;
  private final Map<String, String> earlier;
  private final Map<String, String> renamed = new LinkedHashMap<>();
  private final Set<String> lost = new HashSet<>();
  private final Map<String, List<String>> byLikeness = new HashMap<>();

  /**
   * @param now name to likeness, in the order of work
   * @param earlier the same of the run before
   */
  Matching(Map<String, String> now, Map<String, String> earlier) {
    this.now = now;
    this.earlier = earlier;
    now.forEach(
        (name, likeness) ->
            byLikeness.computeIfAbsent(likeness, one -> new ArrayList<>()).add(name));
  }

  /** What a photograph is called now; nothing where none looks like it any more. */
  Optional<String> of(String photograph, Optional<String> likeness) {
    Optional<String> shown =
        likeness
            .or(() -> Optional.ofNullable(earlier.get(photograph)))
            .or(() -> Optional.ofNullable(now.get(photograph)));
    Optional<String> found =
        shown.filter(one -> one.equals(now.get(photograph))).map(same -> photograph);
    if (found.isEmpty()) {
      found = shown.flatMap(one -> only(byLikeness.getOrDefault(one, List.of())));
      found.ifPresent(name -> renamed.put(photograph, name));
    }
    if (found.isEmpty()) {
      lost.add(photograph);
    }
    return found;
  }

  /** Where several look alike nobody knows which of them it was. */
  private static Optional<String> only(List<String> names) {
    return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
  }

  /** Photographs that have other names now. */
  Map<String, String> renamed() {
    return renamed;
  }

  /** Photographs that no photograph looks like any more. */
  Set<String> lost() {
    return lost;
  }
}

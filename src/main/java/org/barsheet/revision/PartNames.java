package org.barsheet.revision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Parts of two versions of a score: which has another name, which is new, which is gone. */
final class PartNames {

  private final Map<String, HeldPart> before;
  private final Map<String, HeldPart> now;
  private final Map<String, String> renamed = new LinkedHashMap<>();
  private final Set<String> added;
  private final Set<String> gone;

  private PartNames(ScoreNotes before, ScoreNotes now) {
    this.before = byName(before);
    this.now = byName(now);
    added = new LinkedHashSet<>(this.now.keySet());
    added.removeAll(this.before.keySet());
    gone = new LinkedHashSet<>(this.before.keySet());
    gone.removeAll(this.now.keySet());
  }

  private static Map<String, HeldPart> byName(ScoreNotes score) {
    Map<String, HeldPart> parts = new LinkedHashMap<>();
    score.parts().forEach(part -> parts.put(part.name(), part));
    return parts;
  }

  static PartNames of(ScoreNotes before, ScoreNotes now) {
    PartNames names = new PartNames(before, now);
    names.pair();
    return names;
  }

  /** A part under another name plays at least half of its bars note for note as before. */
  private void pair() {
    for (String part : List.copyOf(gone)) {
      Optional<String> other = added.stream().filter(name -> isLike(part, name)).findFirst();
      if (other.isPresent()) {
        renamed.put(part, other.get());
        gone.remove(part);
        added.remove(other.get());
      }
    }
  }

  private boolean isLike(String part, String other) {
    Map<List<BarNote>, Integer> was = played(before, part);
    Map<List<BarNote>, Integer> is = played(now, other);
    int kept = 0;
    for (Map.Entry<List<BarNote>, Integer> bar : was.entrySet()) {
      kept += Math.min(bar.getValue(), is.getOrDefault(bar.getKey(), 0));
    }
    return kept > 0 && 2 * kept >= Math.max(count(was), count(is));
  }

  /** The bars in which a part does not rest, and how often it plays each. */
  private static Map<List<BarNote>, Integer> played(Map<String, HeldPart> parts, String name) {
    Map<List<BarNote>, Integer> bars = new HashMap<>();
    HeldPart part = parts.get(name);
    if (part != null) {
      part.bars().stream()
          .filter(bar -> !bar.isEmpty())
          .forEach(bar -> bars.merge(bar, 1, Integer::sum));
    }
    return bars;
  }

  private static int count(Map<List<BarNote>, Integer> bars) {
    return bars.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** What a part of the version before is called now. */
  String now(String name) {
    return renamed.getOrDefault(name, name);
  }

  /** What became of parts, in sentences without closing full stop. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    renamed.forEach((was, is) -> sentences.add(was + " is now called " + is));
    added.forEach(name -> sentences.add(name + " is new"));
    gone.forEach(name -> sentences.add(name + " is gone"));
    return sentences;
  }
}

package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Parts of two versions of a score: which has another name, which is new, which is gone. */
final class PartNames {

  private final ScoreVersion before;
  private final ScoreVersion now;
  private final Map<String, String> renamed = new LinkedHashMap<>();
  private final Set<String> added;
  private final Set<String> gone;

  private PartNames(ScoreVersion before, ScoreVersion now) {
    this.before = before;
    this.now = now;
    added = new LinkedHashSet<>(now.parts());
    added.removeAll(before.parts());
    gone = new LinkedHashSet<>(before.parts());
    gone.removeAll(now.parts());
  }

  static PartNames of(Music before, Music now) {
    PartNames names =
        new PartNames(ScoreVersion.of(before, name -> name), ScoreVersion.of(now, name -> name));
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
    List<List<HeldNote>> was = before.playedBy(part);
    List<List<HeldNote>> left = new ArrayList<>(now.playedBy(other));
    int most = Math.max(was.size(), left.size());
    long kept = was.stream().filter(left::remove).count();
    return kept > 0 && 2 * kept >= most;
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

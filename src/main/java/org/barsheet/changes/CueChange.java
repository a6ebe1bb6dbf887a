package org.barsheet.changes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.barsheet.changes.LaidFilm.LaidCue;

/**
 * What became of one return of a motif or one mark between two runs.
 *
 * @param before where it was, or nothing for a new one
 * @param now where it is, or nothing for one that is gone; one of the two is there
 */
public record CueChange(Optional<LaidCue> before, Optional<LaidCue> now) {

  /** What it costs to take a cue as new or gone rather than as the same as another. */
  private static final double UNPAIRED = 0.6;

  private static final double OTHER_BEAT = 0.3;
  private static final double PER_BAR = 0.1;
  private static final int MOST_BARS = 16;

  /**
   * Every return and mark that has another place or another number than before. Cues of one name
   * are paired in order of time; a pair costs the more the further it is apart in bars, and the
   * cheapest pairing of all is taken.
   */
  static List<CueChange> between(List<LaidCue> before, List<LaidCue> now) {
    Map<String, List<LaidCue>> was = byName(before);
    Map<String, List<LaidCue>> is = byName(now);
    Set<String> names = new LinkedHashSet<>(is.keySet());
    names.addAll(was.keySet());
    List<CueChange> changes = new ArrayList<>();
    for (String name : names) {
      changes.addAll(pairs(was.getOrDefault(name, List.of()), is.getOrDefault(name, List.of())));
    }
    changes.removeIf(CueChange::isAsBefore);
    return List.copyOf(changes);
  }

  private static Map<String, List<LaidCue>> byName(List<LaidCue> cues) {
    Map<String, List<LaidCue>> byName = new LinkedHashMap<>();
    for (LaidCue cue : cues) {
      if (!cue.name().isEmpty()) {
        byName.computeIfAbsent(cue.kind() + " " + cue.name(), key -> new ArrayList<>()).add(cue);
      }
    }
    return byName;
  }

  private static List<CueChange> pairs(List<LaidCue> before, List<LaidCue> now) {
    double[][] least = new double[before.size() + 1][now.size() + 1];
    for (int i = before.size(); i >= 0; i--) {
      for (int j = now.size(); j >= 0; j--) {
        least[i][j] = least(least, before, now, i, j);
      }
    }
    List<CueChange> pairs = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < before.size() || j < now.size()) {
      boolean both = i < before.size() && j < now.size();
      if (both && least[i][j] == distance(before.get(i), now.get(j)) + least[i + 1][j + 1]) {
        pairs.add(new CueChange(Optional.of(before.get(i++)), Optional.of(now.get(j++))));
      } else if (i < before.size() && least[i][j] == UNPAIRED + least[i + 1][j]) {
        pairs.add(new CueChange(Optional.of(before.get(i++)), Optional.empty()));
      } else {
        pairs.add(new CueChange(Optional.empty(), Optional.of(now.get(j++))));
      }
    }
    return pairs;
  }

  private static double least(
      double[][] least, List<LaidCue> before, List<LaidCue> now, int i, int j) {
    List<Double> ways = new ArrayList<>();
    if (i < before.size() && j < now.size()) {
      ways.add(distance(before.get(i), now.get(j)) + least[i + 1][j + 1]);
    }
    if (i < before.size()) {
      ways.add(UNPAIRED + least[i + 1][j]);
    }
    if (j < now.size()) {
      ways.add(UNPAIRED + least[i][j + 1]);
    }
    return ways.isEmpty() ? 0 : Collections.min(ways);
  }

  private static double distance(LaidCue one, LaidCue other) {
    int bars = Math.min(MOST_BARS, Math.abs(one.bar() - other.bar()));
    return PER_BAR * bars + (one.beat().compareTo(other.beat()) == 0 ? 0 : OTHER_BEAT);
  }

  private boolean isAsBefore() {
    return before.isPresent()
        && now.isPresent()
        && place(before.get()).equals(place(now.get()))
        && before.get().number() == now.get().number();
  }

  private static String place(LaidCue cue) {
    return cue.bar() + " " + cue.beat().toPlainString();
  }

  /** {@code glimmer 5, bar 33, was glimmer 4, bar 31}. */
  public String sentence() {
    if (before.isEmpty()) {
      return now.orElseThrow().words() + ", is new";
    }
    if (now.isEmpty()) {
      return before.get().words() + ", is gone";
    }
    return now.get().words() + ", was " + before.get().words();
  }
}

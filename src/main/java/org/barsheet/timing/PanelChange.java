package org.barsheet.timing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.Prose;

/**
 * What became of one panel between two runs.
 *
 * @param panel its name
 * @param before where it was laid, or nothing for a new panel
 * @param now where it is laid, or nothing for one that is gone; one of the two is there
 */
public record PanelChange(String panel, Optional<LaidPanel> before, Optional<LaidPanel> now) {

  /** Runs of at least so many panels that move alike are told in one sentence. */
  private static final int RUN = 3;

  /**
   * Every panel that does not lie as it did: those of now in story order, then those gone. Panels
   * are known by their names.
   */
  public static List<PanelChange> between(List<LaidPanel> before, List<LaidPanel> now) {
    Map<String, LaidPanel> gone = new LinkedHashMap<>();
    before.forEach(panel -> gone.put(panel.name(), panel));
    List<PanelChange> changes = new ArrayList<>();
    for (LaidPanel panel : now) {
      Optional<LaidPanel> was = Optional.ofNullable(gone.remove(panel.name()));
      if (!was.equals(Optional.of(panel))) {
        changes.add(new PanelChange(panel.name(), was, Optional.of(panel)));
      }
    }
    gone.forEach(
        (name, was) -> changes.add(new PanelChange(name, Optional.of(was), Optional.empty())));
    return List.copyOf(changes);
  }

  /** Whether it is in both runs. */
  public boolean stays() {
    return before.isPresent() && now.isPresent();
  }

  /** Frames its shot begins later than it did; negative if earlier, 0 if it is new or gone. */
  public long beginsLater() {
    return stays() ? start(now) - start(before) : 0;
  }

  private static long start(Optional<LaidPanel> panel) {
    return panel.orElseThrow().frames().start();
  }

  /** Frames its shot is longer than it was; negative if shorter, 0 if it is new or gone. */
  public long growsBy() {
    return stays()
        ? now.orElseThrow().frames().length() - before.orElseThrow().frames().length()
        : 0;
  }

  /** Whether it sits on another cue than it did. */
  public boolean sitsElsewhere() {
    return stays() && !before.orElseThrow().cueId().equals(now.orElseThrow().cueId());
  }

  /** Frames its reveals land later than they did, by opening, where that is not as its shot. */
  public Map<String, Long> landsLater() {
    Map<String, Long> later = new LinkedHashMap<>();
    if (stays()) {
      Map<String, Long> was = new HashMap<>();
      before.orElseThrow().landings().forEach(l -> was.putIfAbsent(l.opening(), l.frame()));
      for (LaidPanel.Landing landing : now.orElseThrow().landings()) {
        long moved = landing.frame() - was.getOrDefault(landing.opening(), landing.frame());
        if (moved != 0 && moved != beginsLater()) {
          later.putIfAbsent(landing.opening(), moved);
        }
      }
    }
    return later;
  }

  /**
   * What changed in sentences, without closing full stops: {@code panel 9 now begins 12 frames
   * later (glimmer 5, bar 33)}. A shot that is longer only because the next one begins later is not
   * told apart.
   */
  public static List<String> sentences(List<PanelChange> changes) {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < changes.size(); ) {
      int end = endOfRun(changes, i);
      if (end - i >= RUN) {
        PanelChange last = changes.get(end - 1);
        sentences.add(
            "panels "
                + changes.get(i).panel()
                + " to "
                + last.panel()
                + " now begin "
                + later(last.beginsLater()));
        i = end;
      } else {
        boolean nextMoves = i + 1 < changes.size() && changes.get(i + 1).beginsLater() != 0;
        sentences.addAll(changes.get(i).sentences(nextMoves));
        i++;
      }
    }
    return List.copyOf(sentences);
  }

  /** The first change from there on that is not told like the one before it. */
  private static int endOfRun(List<PanelChange> changes, int from) {
    int end = from;
    while (end < changes.size()
        && changes.get(end).isPlainMove()
        && changes.get(end).beginsLater() == changes.get(from).beginsLater()) {
      end++;
    }
    return end;
  }

  private boolean isPlainMove() {
    return stays() && !sitsElsewhere() && beginsLater() != 0 && landsLater().isEmpty();
  }

  private List<String> sentences(boolean nextMoves) {
    List<String> sentences = new ArrayList<>();
    if (before.isEmpty()) {
      sentences.add("panel " + panel + " is new (" + now.orElseThrow().cue() + ")");
    } else if (now.isEmpty()) {
      sentences.add("panel " + panel + " is gone (" + before.orElseThrow().cue() + ")");
    } else if (sitsElsewhere()) {
      sentences.add(
          "panel "
              + panel
              + " is now on "
              + now.get().cue()
              + (beginsLater() == 0 ? "" : " and begins " + later(beginsLater()))
              + "; it was on "
              + before.get().cue());
    } else if (beginsLater() != 0) {
      sentences.add(
          "panel " + panel + " now begins " + later(beginsLater()) + " (" + now.get().cue() + ")");
    } else if (growsBy() != 0 && !nextMoves) {
      long by = growsBy();
      String words = Prose.count(Math.abs(by), "frame") + (by > 0 ? " longer" : " shorter");
      sentences.add("panel " + panel + " is now " + words);
    }
    landsLater()
        .forEach(
            (opening, by) ->
                sentences.add(opening + " in panel " + panel + " now lands " + later(by)));
    return sentences;
  }

  /** {@code 1 frame later}, {@code 12 frames earlier}. */
  public static String later(long frames) {
    return Prose.count(Math.abs(frames), "frame") + (frames < 0 ? " earlier" : " later");
  }
}

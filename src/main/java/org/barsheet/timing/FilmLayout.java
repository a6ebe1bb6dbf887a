package org.barsheet.timing;

import java.util.List;
import org.barsheet.align.Alternative;

/**
 * One whole layout of the panels.
 *
 * @param more how much more it costs than the best, 0 for the best itself
 * @param why the largest single thing that makes it dearer, or "" where nothing does
 * @param shots in story order
 * @param differences panels that do not lie as in the best one, in story order
 */
public record FilmLayout(double more, String why, List<Shot> shots, List<PanelChange> differences) {

  public FilmLayout {
    shots = List.copyOf(shots);
    differences = List.copyOf(differences);
  }

  static FilmLayout of(double more, String why, List<Shot> best, List<Shot> shots) {
    return new FilmLayout(
        more, why, shots, PanelChange.between(LaidPanel.of(best), LaidPanel.of(shots)));
  }

  /** Whether nothing speaks against taking it instead of the best. */
  public boolean isFreeChoice() {
    return more < Alternative.FREE_CHOICE;
  }

  /**
   * What differs from the best one in sentences, without closing full stops: {@code panel 9 sits on
   * glimmer 6, bar 37, not on glimmer 5, bar 33: begins 96 frames later}.
   */
  public List<String> sentences() {
    return differences.stream()
        .filter(change -> change.sitsElsewhere() || change.beginsLater() != 0)
        .map(FilmLayout::sentence)
        .toList();
  }

  private static String sentence(PanelChange change) {
    String here = change.now().orElseThrow().cue();
    String there = change.before().orElseThrow().cue();
    String moved =
        change.beginsLater() == 0
            ? "begins on the same frame"
            : "begins " + PanelChange.later(change.beginsLater());
    return here.equals(there)
        ? "panel " + change.panel() + " " + moved + " (" + here + ")"
        : "panel " + change.panel() + " is on " + here + ", not on " + there + ": " + moved;
  }
}

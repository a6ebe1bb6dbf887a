package org.barsheet.timing;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;

/**
 * Where one run laid a panel: what another run is compared by.
 *
 * @param name of the panel
 * @param cueId permanent name of its cue within the film
 * @param cue its cue in words, {@code glimmer 5, bar 33}
 * @param frames film frames of its shot
 * @param landings where its reveals land, in the plan's order
 */
public record LaidPanel(
    String name, String cueId, String cue, FrameSpan frames, List<Landing> landings) {

  public LaidPanel {
    landings = List.copyOf(landings);
  }

  /**
   * Where a reveal lands.
   *
   * @param opening what moves
   * @param frame film frame of the landing photograph
   */
  public record Landing(String opening, long frame) {}

  /** The panels of a film, in story order. */
  public static List<LaidPanel> of(List<Shot> shots) {
    return shots.stream().map(LaidPanel::of).toList();
  }

  private static LaidPanel of(Shot shot) {
    List<Landing> landings = new ArrayList<>();
    for (int i = 0; i < shot.reveals().size(); i++) {
      String opening = shot.panel().reveals().get(i).opening();
      landings.add(new Landing(opening, shot.reveals().get(i).room().landsFrame()));
    }
    return new LaidPanel(
        shot.panel().name(), shot.cue().id(), words(shot.cue()), shot.frames(), landings);
  }

  private static String words(Cue cue) {
    String bar = "bar " + cue.place().bar();
    return cue.title().startsWith(bar) ? cue.title() : cue.title() + ", " + bar;
  }
}

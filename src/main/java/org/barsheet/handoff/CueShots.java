package org.barsheet.handoff;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;

/** Which shots sit on which cue. */
final class CueShots {

  private final Map<String, List<Shot>> onCues;

  CueShots(FilmSheet sheet) {
    this.onCues =
        sheet.timing().shots().stream().collect(Collectors.groupingBy(shot -> shot.cue().id()));
  }

  /** The shots that sit on a cue, in story order. */
  List<Shot> on(Cue cue) {
    return onCues.getOrDefault(cue.id(), List.of());
  }

  /** Names of the panels that sit on a cue, in story order. */
  List<String> panelsOn(Cue cue) {
    return on(cue).stream().map(shot -> shot.panel().name()).toList();
  }
}

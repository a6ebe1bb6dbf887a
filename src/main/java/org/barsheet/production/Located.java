package org.barsheet.production;

import java.util.List;
import org.barsheet.plan.Film;
import org.barsheet.timing.Cue;

/**
 * Places of a film.
 *
 * @param film its settings
 * @param cues the moments asked for
 */
public record Located(Film film, List<Cue> cues) {

  public Located {
    cues = List.copyOf(cues);
  }
}

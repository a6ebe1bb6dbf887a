package org.barsheet.production;

import java.util.List;
import org.barsheet.cues.Cue;
import org.barsheet.plan.Film;

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

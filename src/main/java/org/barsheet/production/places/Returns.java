package org.barsheet.production.places;

import java.util.List;
import org.barsheet.cues.Cue;
import org.barsheet.cues.MotifSearch;
import org.barsheet.cues.Places;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;

/**
 * Every return of every motif of a plan.
 *
 * @param plan what was asked
 * @param music where they sound
 * @param search what found them, and answers further questions
 * @param occurrences in order of time, then of the plan's motifs
 */
public record Returns(Plan plan, Music music, MotifSearch search, List<Occurrence> occurrences) {

  public Returns {
    occurrences = List.copyOf(occurrences);
  }

  public static Returns of(Plan plan, Music music, MotifSearch search) {
    return new Returns(plan, music, search, search.occurrences());
  }

  /**
   * The moments that places in the music mean, as {@link Places#find} tells them.
   *
   * @throws org.barsheet.input.InputException with every place that cannot be found
   */
  public List<Cue> find(List<Place> places) {
    return Places.find(plan, music, occurrences, places);
  }

  /** Returns of one motif that count, certain and likely ones. */
  public List<Occurrence> counted(String motif) {
    return occurrences.stream()
        .filter(found -> found.motif().equals(motif) && found.number() > 0)
        .toList();
  }
}

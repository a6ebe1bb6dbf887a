package org.barsheet.production;

import java.util.List;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;

/**
 * Every return of every motif of a plan.
 *
 * @param plan what was asked
 * @param music where they sound
 * @param occurrences in order of time, then of the plan's motifs
 */
public record Returns(Plan plan, Music music, List<Occurrence> occurrences) {

  public Returns {
    occurrences = List.copyOf(occurrences);
  }
}

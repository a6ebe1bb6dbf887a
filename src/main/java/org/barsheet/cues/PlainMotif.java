package org.barsheet.cues;

import org.barsheet.input.Problem;
import org.barsheet.plan.MotifRequest;

/**
 * A motif, or one shape of it, that is too plain to be looked for. The rest of the plan goes on
 * without it.
 *
 * @param motif as the plan asks for it
 * @param hasOtherShapes whether the motif is looked for all the same, by its other shapes
 * @param why what makes it so and what to do, without file or position
 */
public record PlainMotif(MotifRequest motif, boolean hasOtherShapes, Problem why) {

  /** What isn't looked for. */
  public String subject() {
    return (hasOtherShapes ? "one shape of motif " : "motif ") + motif.name();
  }
}

package org.barsheet.handoff.card;

import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Side;

/**
 * Where a protractor stands, and what it has to reach.
 *
 * @param name of the movement
 * @param end where it stands, in words
 * @param isMirrored whether the hinge is at its right: printed side away from the flap, that is how
 *     a flap hinged at the right is seen
 * @param flap from the hinge to the free edge in millimeters, infinite where nothing says it
 */
record ProtractorUse(String name, String end, boolean isMirrored, double flap) {

  static ProtractorUse of(Movement movement, Opening opening) {
    double flap =
        movement.measure() instanceof Measure.Turn turn
            ? turn.hinge().flap()
            : Double.POSITIVE_INFINITY;
    if (opening.motion() instanceof Hinged hinged) {
      return new ProtractorUse(
          movement.name(), end(hinged.hinge()), hinged.hinge() == Side.RIGHT, flap);
    }
    return new ProtractorUse(movement.name(), "an end of the hinge", false, flap);
  }

  /** The end from which the hinge is seen as the protractor has it. */
  private static String end(Side hinge) {
    return switch (hinge) {
      case LEFT, RIGHT -> "the lower end of the hinge";
      case TOP -> "the left end of the hinge";
      case BOTTOM -> "the right end of the hinge";
    };
  }
}

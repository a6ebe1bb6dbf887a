package org.barsheet.exposure;

import org.barsheet.plan.Opening;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.plan.Slow;

/**
 * What makes two reveals show the same photographs: the same thing under the camera, moved in the
 * same way. Light and backing are the model's, so they agree where the model does. How many
 * photographs they show makes no difference: the longest is photographed, the others show some of
 * its photographs.
 *
 * @param model what is under the camera
 * @param opening the opening, where the model is the artwork itself and no two openings are the
 *     same thing; else ""
 * @param motion how it moves
 * @param slow where the movement is slow, seen as it opens
 * @param evenIn what grows evenly
 */
record MovementKey(String model, String opening, Opening.Motion motion, Slow slow, EvenIn evenIn) {

  /** A model larger than the artwork is a thing of its own; otherwise it is the artwork itself. */
  static MovementKey of(Reveal reveal, Opening opening, double enlarged) {
    Opening.Motion motion = opening.motion();
    boolean artwork = enlarged == 1;
    boolean growsByAngleOrOpening =
        motion instanceof Opening.Hinged || motion instanceof Opening.Iris;
    return new MovementKey(
        opening.model(),
        artwork ? opening.name() : "",
        motion,
        reveal.way() == Way.CLOSES ? backwards(reveal.slow()) : reveal.slow(),
        growsByAngleOrOpening ? reveal.evenIn() : EvenIn.ANGLE);
  }

  /**
   * A closing shows the photographs of an opening backwards, so its slow end is their slow start.
   */
  private static Slow backwards(Slow slow) {
    return switch (slow) {
      case START -> Slow.END;
      case END -> Slow.START;
      case NONE, BOTH -> slow;
    };
  }
}

package org.barsheet.plan;

import java.util.List;
import java.util.Optional;

/**
 * A place in the artwork that opens.
 *
 * @param name unique in the plan
 * @param rect where it lies
 * @param model the thing put under the camera for it
 * @param motion how it opens
 * @param heldBy what holds it while it is open, in the order used
 * @param where its place in the plan, for messages
 */
public record Opening(
    String name, Rect rect, String model, Motion motion, List<Support> heldBy, Where where) {

  public Opening {
    heldBy = List.copyOf(heldBy);
  }

  /** How an opening opens. */
  public sealed interface Motion {}

  /** An edge or a direction. */
  public enum Side {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM
  }

  /**
   * A flap on a hinge.
   *
   * @param hinge the edge it turns about
   * @param degrees how far it opens, more than 0, at most 180
   */
  public record Hinged(Side hinge, double degrees) implements Motion {}

  /**
   * A shutter that slides.
   *
   * @param toward where it goes
   * @param millimeters how far, at the model's size; 0 means its own width or height
   */
  public record Slides(Side toward, double millimeters) implements Motion {}

  /**
   * A piece lifted off.
   *
   * @param millimeters how high, at the model's size
   */
  public record LiftsOff(double millimeters) implements Motion {}

  /**
   * A lamp that brightens.
   *
   * @param percent of its full light, more than 0, at most 100
   */
  public record Brightens(double percent) implements Motion {}

  /**
   * A hole that grows from its middle.
   *
   * @param percent of its full width, more than 0, at most 100
   */
  public record Iris(double percent) implements Motion {}

  /**
   * A free value per photograph.
   *
   * @param values of photographs 1, 2 … in the unit
   * @param unit what they count ("mm")
   */
  public record Values(List<Double> values, String unit) implements Motion {
    public Values {
      values = List.copyOf(values);
    }
  }

  /**
   * What holds a movement for a part of it.
   *
   * @param kind "putty", "thread", or another word of the animator's
   * @param upToMillimeters putty serves up to this height from the table, where given
   * @param guideMillimeters a thread runs from this far above the hinge, where given
   * @param text as the plan says it
   */
  public record Support(
      String kind,
      Optional<Double> upToMillimeters,
      Optional<Double> guideMillimeters,
      String text) {}
}

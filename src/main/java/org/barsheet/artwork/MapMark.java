package org.barsheet.artwork;

import org.barsheet.plan.Rect;

/** Something drawn on the map of the artwork, in millimeters on paper. */
public sealed interface MapMark {

  /**
   * A rectangle with a black edge.
   *
   * @param weight of the edge
   * @param opaque whether it covers what lies below with white
   */
  record Box(Rect rect, double weight, boolean opaque) implements MapMark {}

  /**
   * A straight line.
   *
   * @param gray whether it is gray instead of black
   * @param arrow whether it ends in the head of an arrow
   */
  record Stroke(
      double fromX,
      double fromY,
      double toX,
      double toY,
      double weight,
      boolean gray,
      boolean arrow)
      implements MapMark {}

  /**
   * A circle.
   *
   * @param solid whether it is filled with black
   */
  record Ring(double x, double y, double radius, double weight, boolean solid) implements MapMark {}

  /**
   * A line of words about their middle.
   *
   * @param points size of the letters
   */
  record Text(double x, double y, String words, double points, boolean bold) implements MapMark {}
}

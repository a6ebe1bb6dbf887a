package org.barsheet.plan;

/**
 * A rectangle of the artwork, in squares from its top left corner.
 *
 * @param left of the left edge
 * @param top of the top edge
 * @param width more than 0
 * @param height more than 0
 */
public record Rect(double left, double top, double width, double height) {

  public Rect {
    if (!(width > 0) || !(height > 0)) {
      throw new IllegalArgumentException("a rectangle has a width and a height");
    }
  }
}

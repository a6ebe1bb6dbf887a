package org.barsheet.plan;

/**
 * A rectangle of the artwork, in squares from its top left corner.
 *
 * @param left of the left edge
 * @param top of the top edge
 * @param wide more than 0
 * @param high more than 0
 */
public record Rect(double left, double top, double wide, double high) {

  public Rect {
    if (!(wide > 0) || !(high > 0)) {
      throw new IllegalArgumentException("a rectangle has a width and a height");
    }
  }
}

package org.barsheet.artwork;

import org.barsheet.plan.Rect;

/**
 * The part of a photograph that fills the frame, in shares of the photograph: 0 is its left and top
 * edge, 1 its right and bottom edge. A photograph of another shape than the film's frame is first
 * cut to that shape about its middle.
 *
 * @param left of the left edge
 * @param top of the top edge
 * @param width more than 0
 * @param height more than 0
 */
public record PhotographCrop(double left, double top, double width, double height) {

  /**
   * A part of what a photograph shows.
   *
   * @param part in squares of the artwork
   * @param whole what the photograph shows, in squares of the artwork
   */
  public static PhotographCrop of(Rect part, Rect whole) {
    return new PhotographCrop(
        (part.left() - whole.left()) / whole.width(),
        (part.top() - whole.top()) / whole.height(),
        part.width() / whole.width(),
        part.height() / whole.height());
  }
}

package org.barsheet.artwork;

import org.barsheet.plan.Rect;

/**
 * The part of a photograph that fills the film's picture, in shares of the photograph: 0 is its
 * left and top edge, 1 its right and bottom edge. A photograph of another shape than the film's
 * picture is first cut to that shape about its middle.
 *
 * @param left of the left edge
 * @param top of the top edge
 * @param wide more than 0
 * @param high more than 0
 */
public record PictureCrop(double left, double top, double wide, double high) {

  /**
   * A part of what a photograph shows.
   *
   * @param part in squares of the artwork
   * @param whole what the photograph shows, in squares of the artwork
   */
  public static PictureCrop of(Rect part, Rect whole) {
    return new PictureCrop(
        (part.left() - whole.left()) / whole.wide(),
        (part.top() - whole.top()) / whole.high(),
        part.wide() / whole.wide(),
        part.high() / whole.high());
  }
}

package org.barsheet.movie;

import java.awt.geom.AffineTransform;
import org.barsheet.plan.Rect;

/**
 * Where the artwork lies in the image.
 *
 * @param left pixels from the image's left edge to the artwork's
 * @param top pixels from the image's top edge to the artwork's
 * @param scale pixels to one square of the artwork
 */
record View(double left, double top, double scale) {

  /** A field that fills the image, or lies in its middle where the two differ in shape. */
  static View of(Sizes sizes, Rect field) {
    double scale = Math.min(sizes.width() / field.width(), sizes.height() / field.height());
    return new View(
        (sizes.width() - field.width() * scale) / 2 - field.left() * scale,
        (sizes.height() - field.height() * scale) / 2 - field.top() * scale,
        scale);
  }

  AffineTransform transform() {
    return new AffineTransform(scale, 0, 0, scale, left, top);
  }
}

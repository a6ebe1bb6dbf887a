package org.barsheet.handoff.drawing;

/**
 * A part of a canvas in whole pixels.
 *
 * @param x of its left edge
 * @param y of its top edge
 * @param wide 0 or more
 * @param high 0 or more
 */
public record PixelRect(int x, int y, int wide, int high) {

  /** The part between shares of its width and height, each 0 to 1. */
  public PixelRect part(double fromX, double fromY, double toX, double toY) {
    int left = x + (int) Math.round(wide * fromX);
    int top = y + (int) Math.round(high * fromY);
    return new PixelRect(
        left, top, x + (int) Math.round(wide * toX) - left, y + (int) Math.round(high * toY) - top);
  }

  /** The largest box of a shape in its middle. */
  public PixelRect fitted(double shapeWide, double shapeHigh) {
    double scale = Math.min(wide / shapeWide, high / shapeHigh);
    int w = (int) Math.round(scale * shapeWide);
    int h = (int) Math.round(scale * shapeHigh);
    return new PixelRect(x + (wide - w) / 2, y + (high - h) / 2, w, h);
  }
}

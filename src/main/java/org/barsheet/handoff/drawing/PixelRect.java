package org.barsheet.handoff.drawing;

/**
 * A part of a canvas in whole pixels.
 *
 * @param x of its left edge
 * @param y of its top edge
 * @param width 0 or more
 * @param height 0 or more
 */
public record PixelRect(int x, int y, int width, int height) {

  /** The part between shares of its width and height, each 0 to 1. */
  public PixelRect part(double fromX, double fromY, double toX, double toY) {
    int left = x + (int) Math.round(width * fromX);
    int top = y + (int) Math.round(height * fromY);
    return new PixelRect(
        left,
        top,
        x + (int) Math.round(width * toX) - left,
        y + (int) Math.round(height * toY) - top);
  }

  /** The largest box of a shape in its middle. */
  public PixelRect fitted(double shapeWide, double shapeHigh) {
    double scale = Math.min(width / shapeWide, height / shapeHigh);
    int w = (int) Math.round(scale * shapeWide);
    int h = (int) Math.round(scale * shapeHigh);
    return new PixelRect(x + (width - w) / 2, y + (height - h) / 2, w, h);
  }
}

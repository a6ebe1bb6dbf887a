package org.barsheet.pixels;

/**
 * A rectangle of an image in pixels, not rounded; pixel 3 reaches from 3 to 4.
 *
 * @param left its left edge
 * @param top its top edge
 * @param right its right edge, not less than {@code left}
 * @param bottom its bottom edge, not less than {@code top}
 */
public record Box(double left, double top, double right, double bottom) {

  public Box {
    if (!(right >= left) || !(bottom >= top)) {
      throw new IllegalArgumentException("a rectangle is 0 or more wide and high");
    }
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  /** The same with so much more on every side. */
  public Box padded(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }

  /** The same further to the right and further down. */
  public Box moved(double across, double down) {
    return new Box(left + across, top + down, right + across, bottom + down);
  }

  /** The same in an image of another scale. */
  public Box times(double scale) {
    return new Box(left * scale, top * scale, right * scale, bottom * scale);
  }

  /** The smallest that holds both. */
  public Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** What of it lies in an image. */
  public Box within(int width, int height) {
    return new Box(
        clamp(left, width), clamp(top, height), clamp(right, width), clamp(bottom, height));
  }

  private static double clamp(double value, double most) {
    return Math.max(0, Math.min(most, value));
  }

  /** Whether they share more than an edge. */
  public boolean meets(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  public boolean holds(double x, double y) {
    return x >= left && x < right && y >= top && y < bottom;
  }
}

package org.barsheet.artwork;

/**
 * A rectangle of the frame in pixels, not rounded; it may lie partly or wholly outside.
 *
 * @param left of the left edge, from the frame's left edge
 * @param top of the top edge, from the frame's top edge
 * @param width 0 or more
 * @param height 0 or more
 */
public record FrameRect(double left, double top, double width, double height) {

  public FrameRect {
    if (!(width >= 0) || !(height >= 0)) {
      throw new IllegalArgumentException("a rectangle is 0 or more wide and high");
    }
  }

  public double right() {
    return left + width;
  }

  public double bottom() {
    return top + height;
  }

  /** What of it lies inside a frame; 0 wide and high on the frame's edge where nothing does. */
  public FrameRect within(int width, int height) {
    double left = between(left(), width);
    double top = between(top(), height);
    return new FrameRect(
        left, top, between(right(), width) - left, between(bottom(), height) - top);
  }

  private static double between(double value, int most) {
    return Math.max(0, Math.min(most, value));
  }

  /** Share of its area that lies inside a frame, 0 to 1; 0 where it has no area. */
  public double shareWithin(int width, int height) {
    FrameRect seen = within(width, height);
    double area = this.width * this.height;
    return area > 0 ? seen.width() * seen.height() / area : 0;
  }
}

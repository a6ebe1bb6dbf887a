package org.barsheet.artwork;

/**
 * A rectangle of the film's picture in pixels, not rounded; it may lie partly or wholly outside.
 *
 * @param left of the left edge, from the picture's left edge
 * @param top of the top edge, from the picture's top edge
 * @param wide 0 or more
 * @param high 0 or more
 */
public record PictureRect(double left, double top, double wide, double high) {

  public PictureRect {
    if (!(wide >= 0) || !(high >= 0)) {
      throw new IllegalArgumentException("a rectangle is 0 or more wide and high");
    }
  }

  public double right() {
    return left + wide;
  }

  public double bottom() {
    return top + high;
  }

  /** What of it lies inside a picture; 0 wide and high on the picture's edge where nothing does. */
  public PictureRect within(int width, int height) {
    double left = between(left(), width);
    double top = between(top(), height);
    return new PictureRect(
        left, top, between(right(), width) - left, between(bottom(), height) - top);
  }

  private static double between(double value, int most) {
    return Math.max(0, Math.min(most, value));
  }

  /** Share of its area that lies inside a picture, 0 to 1; 0 where it has no area. */
  public double shareWithin(int width, int height) {
    PictureRect seen = within(width, height);
    double area = wide * high;
    return area > 0 ? seen.wide() * seen.high() / area : 0;
  }
}

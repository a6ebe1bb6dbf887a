package org.barsheet.pixels;

/**
 * How the camera sees still things otherwise than in a first photograph. All about the image's
 * middle.
 *
 * @param across pixels they lie further to the right
 * @param down pixels they lie further down
 * @param turn degrees they are turned, clockwise as seen
 * @param scale how many times larger they are
 * @param blocks how many places it was measured by
 * @param spread pixels by which those places disagree, as a standard deviation
 */
public record CameraMove(
    double across, double down, double turn, double scale, int blocks, double spread) {

  public static final CameraMove NONE = new CameraMove(0, 0, 0, 1, 0, 0);

  /** Whether enough places could be found again to say anything. */
  public boolean isKnown() {
    return blocks >= Registration.FEWEST;
  }

  /** How far the middle is shifted, in pixels. */
  public double shift() {
    return Math.hypot(across, down);
  }

  /** The most that a turn and a change of scale shift a corner of an image, in pixels. */
  public double atCorner(int width, int height) {
    double corner = Math.hypot(width, height) / 2;
    return corner * Math.hypot(Math.toRadians(turn), scale - 1);
  }

  /** Where a place of the first photograph lies in this one, from the middle, to the right. */
  double x(double fromMiddleX, double fromMiddleY) {
    return across + scale * fromMiddleX - Math.toRadians(turn) * fromMiddleY;
  }

  /** The same, downwards. */
  double y(double fromMiddleX, double fromMiddleY) {
    return down + scale * fromMiddleY + Math.toRadians(turn) * fromMiddleX;
  }
}

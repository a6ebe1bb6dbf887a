package org.barsheet.pixels;

import java.util.List;

/** Pixels so bright that the camera no longer told them apart. */
public final class Clipping {

  private static final int BRIGHTEST = 254;
  private static final int EVERY = 4;

  private Clipping() {}

  /** Share of a photograph's still parts that are clipped in a channel, of every fourth pixel. */
  public static double share(ColorImage image, List<Box> moving) {
    int clipped = 0;
    int count = 0;
    for (int y = 0; y < image.height(); y += EVERY) {
      for (int x = 0; x < image.width(); x += EVERY) {
        if (!isMoving(moving, x, y)) {
          count++;
          boolean bright =
              image.red(x, y) >= BRIGHTEST
                  || image.green(x, y) >= BRIGHTEST
                  || image.blue(x, y) >= BRIGHTEST;
          clipped += bright ? 1 : 0;
        }
      }
    }
    return count == 0 ? 0 : (double) clipped / count;
  }

  private static boolean isMoving(List<Box> moving, int x, int y) {
    for (Box box : moving) {
      if (box.holds(x, y)) {
        return true;
      }
    }
    return false;
  }
}

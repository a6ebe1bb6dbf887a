package org.barsheet.pixels;

/**
 * A smaller image in linear light, 0 to 1: each pixel is the mean of a square of the image it was
 * made from, so nothing is lost between the pixels. Levels are taken to be those of sRGB (IEC
 * 61966-2-1).
 */
public final class Reduced {

  private static final float[] LINEAR = new float[256];

  /** Levels of light by its square root, in so many steps: off by a hundredth at most. */
  private static final int STEPS = 2048;

  private static final double[] LEVEL = new double[STEPS + 1];

  static {
    for (int step = 0; step <= STEPS; step++) {
      double linear = (double) step * step / ((double) STEPS * STEPS);
      LEVEL[step] =
          255
              * (linear <= 0.0031308
                  ? 12.92 * linear
                  : 1.055 * StrictMath.pow(linear, 1 / 2.4) - 0.055);
    }
    for (int level = 0; level < LINEAR.length; level++) {
      double share = level / 255.0;
      LINEAR[level] =
          (float) (share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4));
    }
  }

  private final int factor;
  private final double left;
  private final double top;
  private final Plane red;
  private final Plane green;
  private final Plane blue;

  private Reduced(int factor, double left, double top, int width, int height) {
    this.factor = factor;
    this.left = left;
    this.top = top;
    this.red = new Plane(width, height, new float[width * height]);
    this.green = new Plane(width, height, new float[width * height]);
    this.blue = new Plane(width, height, new float[width * height]);
  }

  /** A whole image with at most so many pixels across. */
  public static Reduced of(ColorImage image, int mostWide) {
    int factor = Math.max(1, (image.width() + mostWide - 1) / mostWide);
    return of(image, new Box(0, 0, image.width(), image.height()), factor);
  }

  /** A part of an image, in whole pixels; a square of {@code factor} pixels becomes one. */
  public static Reduced of(ColorImage image, Box part, int factor) {
    Box inside = part.within(image.width(), image.height());
    int left = (int) Math.floor(inside.left());
    int top = (int) Math.floor(inside.top());
    int width = Math.max(1, ((int) Math.ceil(inside.right()) - left) / factor);
    int height = Math.max(1, ((int) Math.ceil(inside.bottom()) - top) / factor);
    Reduced reduced = new Reduced(factor, left, top, width, height);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        reduced.gather(image, left + x * factor, top + y * factor, x, y);
      }
    }
    return reduced;
  }

  private void gather(ColorImage image, int fromX, int fromY, int x, int y) {
    float sumRed = 0;
    float sumGreen = 0;
    float sumBlue = 0;
    int toX = Math.min(image.width(), fromX + factor);
    int toY = Math.min(image.height(), fromY + factor);
    for (int row = fromY; row < toY; row++) {
      for (int column = fromX; column < toX; column++) {
        sumRed += LINEAR[image.red(column, row)];
        sumGreen += LINEAR[image.green(column, row)];
        sumBlue += LINEAR[image.blue(column, row)];
      }
    }
    float count = Math.max(1, (toX - fromX) * (toY - fromY));
    red.set(x, y, sumRed / count);
    green.set(x, y, sumGreen / count);
    blue.set(x, y, sumBlue / count);
  }

  /** How many pixels of the image one of these is wide. */
  public int factor() {
    return factor;
  }

  /** Where its left edge lies in the image, in pixels of that. */
  public double left() {
    return left;
  }

  /** Where its top edge lies in the image, in pixels of that. */
  public double top() {
    return top;
  }

  public int width() {
    return red.width();
  }

  public int height() {
    return red.height();
  }

  Plane red() {
    return red;
  }

  Plane green() {
    return green;
  }

  Plane blue() {
    return blue;
  }

  /** Linear luminance (ITU-R BT.709). */
  double luminance(int x, int y) {
    return 0.2126 * red.at(x, y) + 0.7152 * green.at(x, y) + 0.0722 * blue.at(x, y);
  }

  /** Levels of luminance as an eye takes them, 0 to 255 (sRGB). */
  Plane levels() {
    float[] values = new float[width() * height()];
    for (int y = 0; y < height(); y++) {
      for (int x = 0; x < width(); x++) {
        values[y * width() + x] = (float) level(luminance(x, y));
      }
    }
    return new Plane(width(), height(), values);
  }

  /** The level, 0 to 255 and not rounded, of linear light (sRGB), from a table. */
  public static double level(double linear) {
    double place = Math.sqrt(Math.max(0, Math.min(1, linear))) * STEPS;
    int step = Math.min(STEPS - 1, (int) place);
    return LEVEL[step] + (place - step) * (LEVEL[step + 1] - LEVEL[step]);
  }

  /** Linear light, 0 to 1, of a level from 0 to 255 (sRGB). */
  public static double linear(int level) {
    return LINEAR[level];
  }
}

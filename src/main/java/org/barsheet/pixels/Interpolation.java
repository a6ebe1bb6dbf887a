package org.barsheet.pixels;

/** Values between pixels by cubic convolution (Keys 1981, a = −1/2: Catmull and Rom's spline). */
final class Interpolation {

  private Interpolation() {}

  /** The square of a plane that begins between its pixels; it has a pixel more on every side. */
  static float[] shifted(Plane plane, double left, double top, int size) {
    int fromX = (int) Math.floor(left);
    int fromY = (int) Math.floor(top);
    double[] across = weights(left - fromX);
    double[] down = weights(top - fromY);
    float[] rows = new float[(size + 3) * size];
    for (int y = 0; y < size + 3; y++) {
      int row = clamp(fromY + y - 1, plane.height());
      for (int x = 0; x < size; x++) {
        double sum = 0;
        for (int k = 0; k < 4; k++) {
          sum += across[k] * plane.at(clamp(fromX + x + k - 1, plane.width()), row);
        }
        rows[y * size + x] = (float) sum;
      }
    }
    float[] result = new float[size * size];
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        double sum = 0;
        for (int k = 0; k < 4; k++) {
          sum += down[k] * rows[(y + k) * size + x];
        }
        result[y * size + x] = (float) sum;
      }
    }
    return result;
  }

  /** The value between pixels; what lies outside repeats the edge. */
  static double value(Plane plane, double x, double y) {
    int fromX = (int) Math.floor(x);
    int fromY = (int) Math.floor(y);
    double[] across = weights(x - fromX);
    double[] down = weights(y - fromY);
    double sum = 0;
    for (int j = 0; j < 4; j++) {
      int row = clamp(fromY + j - 1, plane.height());
      for (int i = 0; i < 4; i++) {
        sum += across[i] * down[j] * plane.at(clamp(fromX + i - 1, plane.width()), row);
      }
    }
    return sum;
  }

  /** The color between pixels, red, green and blue in eight bits each. */
  static int color(ColorImage image, double x, double y) {
    int fromX = (int) Math.floor(x);
    int fromY = (int) Math.floor(y);
    double[] across = weights(x - fromX);
    double[] down = weights(y - fromY);
    double red = 0;
    double green = 0;
    double blue = 0;
    for (int j = 0; j < 4; j++) {
      int row = clamp(fromY + j - 1, image.height());
      for (int i = 0; i < 4; i++) {
        int column = clamp(fromX + i - 1, image.width());
        double weight = across[i] * down[j];
        red += weight * image.red(column, row);
        green += weight * image.green(column, row);
        blue += weight * image.blue(column, row);
      }
    }
    return level(red) << 16 | level(green) << 8 | level(blue);
  }

  private static int level(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }

  private static int clamp(int index, int size) {
    return Math.max(0, Math.min(size - 1, index));
  }

  private static double[] weights(double t) {
    double square = t * t;
    double cube = square * t;
    return new double[] {
      -0.5 * cube + square - 0.5 * t,
      1.5 * cube - 2.5 * square + 1,
      -1.5 * cube + 2 * square + 0.5 * t,
      0.5 * cube - 0.5 * square
    };
  }
}

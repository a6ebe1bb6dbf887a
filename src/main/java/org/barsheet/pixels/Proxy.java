package org.barsheet.pixels;

/** A small gray copy of a photograph, 8 bits a pixel, kept while a sequence is looked at. */
public final class Proxy {

  private final int width;
  private final int height;
  private final int factor;
  private final byte[] levels;

  private Proxy(int width, int height, int factor, byte[] levels) {
    this.width = width;
    this.height = height;
    this.factor = factor;
    this.levels = levels;
  }

  public static Proxy of(Reduced small) {
    Plane plane = small.levels();
    byte[] levels = new byte[plane.width() * plane.height()];
    for (int y = 0; y < plane.height(); y++) {
      for (int x = 0; x < plane.width(); x++) {
        levels[y * plane.width() + x] = (byte) Math.round(plane.at(x, y));
      }
    }
    return new Proxy(plane.width(), plane.height(), small.factor(), levels);
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  int factor() {
    return factor;
  }

  /**
   * The same as the first photograph's camera would have seen it in the first photograph's light.
   */
  Plane like(CameraMove move, double stops) {
    float[] table = new float[256];
    for (int level = 0; level < table.length; level++) {
      table[level] = (float) Reduced.level(Reduced.linear(level) * Math.pow(2, -stops));
    }
    float[] values = new float[levels.length];
    for (int i = 0; i < levels.length; i++) {
      values[i] = table[levels[i] & 0xFF];
    }
    Plane plane = new Plane(width, height, values);
    boolean still = move.shift() + move.atCorner(width * factor, height * factor) < 0.05 * factor;
    return still ? plane : shifted(plane, move);
  }

  private Plane shifted(Plane plane, CameraMove move) {
    float[] values = new float[levels.length];
    double middleX = width * factor / 2.0;
    double middleY = height * factor / 2.0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double fromX = (x + 0.5) * factor - middleX;
        double fromY = (y + 0.5) * factor - middleY;
        values[y * width + x] =
            (float)
                Interpolation.value(
                    plane,
                    (move.x(fromX, fromY) + middleX) / factor - 0.5,
                    (move.y(fromX, fromY) + middleY) / factor - 0.5);
      }
    }
    return new Plane(width, height, values);
  }
}

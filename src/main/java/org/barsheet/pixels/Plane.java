package org.barsheet.pixels;

/** One value a pixel. */
public final class Plane {

  private final int width;
  private final int height;
  private final float[] values;

  /**
   * Values row by row; the array is kept, not copied.
   *
   * @param values {@code width * height} of them
   */
  public Plane(int width, int height, float[] values) {
    if (values.length != width * height) {
      throw new IllegalArgumentException("a value a pixel");
    }
    this.width = width;
    this.height = height;
    this.values = values;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  public float at(int x, int y) {
    return values[y * width + x];
  }

  void set(int x, int y, float value) {
    values[y * width + x] = value;
  }

  double mean() {
    double sum = 0;
    for (float value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /** A part that lies in it. */
  Plane part(int left, int top, int wide, int high) {
    float[] part = new float[wide * high];
    for (int y = 0; y < high; y++) {
      System.arraycopy(values, (top + y) * width + left, part, y * wide, wide);
    }
    return new Plane(wide, high, part);
  }
}

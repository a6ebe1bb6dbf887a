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

  /** The value between pixels, of the four about it; what lies outside repeats the edge. */
  double between(double x, double y) {
    int column = (int) Math.floor(x);
    int row = (int) Math.floor(y);
    double across = x - column;
    double down = y - row;
    return (clamped(column, row) * (1 - across) + clamped(column + 1, row) * across) * (1 - down)
        + (clamped(column, row + 1) * (1 - across) + clamped(column + 1, row + 1) * across) * down;
  }

  private float clamped(int x, int y) {
    return at(Math.max(0, Math.min(width - 1, x)), Math.max(0, Math.min(height - 1, y)));
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

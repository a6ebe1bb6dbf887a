package org.barsheet.pixels;

/** What a photograph shows of a hole and a little about it, kept small: 8 bits a channel. */
public final class HoleView {

  private static final int MOST_PIXELS = 60_000;

  private final int factor;
  private final double left;
  private final double top;
  private final int width;
  private final int height;
  private final byte[] rgb;

  private HoleView(Reduced part) {
    this.factor = part.factor();
    this.left = part.left();
    this.top = part.top();
    this.width = part.width();
    this.height = part.height();
    this.rgb = new byte[3 * width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = 3 * (y * width + x);
        rgb[at] = (byte) Math.round(Reduced.level(part.red().at(x, y)));
        rgb[at + 1] = (byte) Math.round(Reduced.level(part.green().at(x, y)));
        rgb[at + 2] = (byte) Math.round(Reduced.level(part.blue().at(x, y)));
      }
    }
  }

  /** A part of a photograph. */
  public static HoleView of(ColorImage image, Box part) {
    Box inside = part.within(image.width(), image.height());
    double pixels = Math.max(1, inside.width() * inside.height());
    int factor = Math.max(1, (int) Math.ceil(Math.sqrt(pixels / MOST_PIXELS)));
    return new HoleView(Reduced.of(image, inside, factor));
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Middle of a column, in pixels of the photograph. */
  double x(int column) {
    return left + (column + 0.5) * factor;
  }

  /** Middle of a row, in pixels of the photograph. */
  double y(int row) {
    return top + (row + 0.5) * factor;
  }

  int factor() {
    return factor;
  }

  double left() {
    return left;
  }

  double top() {
    return top;
  }

  double red(int column, int row) {
    return Reduced.linear(rgb[3 * (row * width + column)] & 0xFF);
  }

  double green(int column, int row) {
    return Reduced.linear(rgb[3 * (row * width + column) + 1] & 0xFF);
  }

  double blue(int column, int row) {
    return Reduced.linear(rgb[3 * (row * width + column) + 2] & 0xFF);
  }

  double luminance(int column, int row) {
    return 0.2126 * red(column, row) + 0.7152 * green(column, row) + 0.0722 * blue(column, row);
  }
}

package org.barsheet.pixels;

/**
 * A color without its brightness: shares of red and green in linear light. A shadow does not change
 * it.
 *
 * @param red share of red
 * @param green share of green
 */
record Tint(double red, double green) {

  /** So much gray is added, or the darkest pixels would have any color. */
  private static final double GRAY = 0.004;

  static Tint of(double red, double green, double blue) {
    double sum = red + green + blue + 3 * GRAY;
    return new Tint((red + GRAY) / sum, (green + GRAY) / sum);
  }

  static Tint of(HoleView view, int column, int row) {
    return of(view.red(column, row), view.green(column, row), view.blue(column, row));
  }

  /** The tint of RRGGBB. */
  static Tint of(String hex) {
    int levels = Integer.parseInt(hex, 16);
    return of(
        Reduced.linear(levels >> 16),
        Reduced.linear(levels >> 8 & 0xFF),
        Reduced.linear(levels & 0xFF));
  }

  /** Share of the way from this to a key at which another lies, not clamped. */
  double wayTo(Tint key, Tint other) {
    double red = key.red - this.red;
    double green = key.green - this.green;
    double square = red * red + green * green;
    return square == 0
        ? 0
        : ((other.red - this.red) * red + (other.green - this.green) * green) / square;
  }

  double distance(Tint other) {
    return Math.hypot(red - other.red, green - other.green);
  }
}

package org.barsheet.artwork;

/**
 * What a keyer sees of a color: its two color differences, without its brightness. They are those
 * of ITU-R BT.709 in 8 bits, {@code Cb = 224·(B′ − Y′)/1.8556} and {@code Cr = 224·(R′ −
 * Y′)/1.5748} with {@code Y′ = 0.2126 R′ + 0.7152 G′ + 0.0722 B′}, not rounded, and 0 instead of
 * 128 for gray.
 *
 * @param cb blue less brightness, −112 to 112
 * @param cr red less brightness, −112 to 112
 */
record Chroma(double cb, double cr) {

  private static final double RED = 0.2126;
  private static final double BLUE = 0.0722;
  private static final double GREEN = 1 - RED - BLUE;
  private static final double SCALE = 224;
  private static final double LEVELS = 255;

  /** The color differences of levels from 0 to 255. */
  static Chroma of(int red, int green, int blue) {
    double luma = RED * red + GREEN * green + BLUE * blue;
    return new Chroma(
        SCALE * (blue - luma) / (2 * (1 - BLUE)) / LEVELS,
        SCALE * (red - luma) / (2 * (1 - RED)) / LEVELS);
  }

  /**
   * The color differences of RRGGBB.
   *
   * @param hex six hexadecimal digits
   */
  static Chroma of(String hex) {
    int levels = Integer.parseInt(hex, 16);
    return of(levels >> 16, levels >> 8 & 0xFF, levels & 0xFF);
  }

  /** How far apart two colors are for a keyer. */
  double distance(Chroma other) {
    return StrictMath.hypot(cb - other.cb, cr - other.cr);
  }
}

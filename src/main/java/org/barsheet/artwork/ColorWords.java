package org.barsheet.artwork;

import java.util.List;

/** Names colors in everyday words: by their hue on the color circle, and light or dark. */
public final class ColorWords {

  /** The hues at every 30 degrees of the circle of red, green and blue, from red. */
  private static final List<String> HUES =
      List.of(
          "red",
          "orange",
          "yellow",
          "yellow-green",
          "green",
          "green",
          "blue-green",
          "blue",
          "blue",
          "violet",
          "magenta",
          "crimson");

  private static final double GRAYISH = 0.12;
  private static final double DARK = 0.35;
  private static final double LIGHT = 0.7;

  private ColorWords() {}

  /**
   * A name for RRGGBB: {@code dark blue}, {@code orange}, {@code light gray}.
   *
   * @param hex six hexadecimal digits
   */
  public static String of(String hex) {
    int levels = Integer.parseInt(hex, 16);
    double red = (levels >> 16) / 255.0;
    double green = (levels >> 8 & 0xFF) / 255.0;
    double blue = (levels & 0xFF) / 255.0;
    double most = Math.max(red, Math.max(green, blue));
    double least = Math.min(red, Math.min(green, blue));
    double lightness = (most + least) / 2;
    String shade = lightness < DARK ? "dark " : lightness > LIGHT ? "light " : "";
    if (most - least < GRAYISH) {
      return most < GRAYISH ? "black" : least > 1 - GRAYISH ? "white" : shade + "gray";
    }
    return shade + HUES.get((int) Math.round(hue(red, green, blue, most, most - least) / 30) % 12);
  }

  /** Degrees on the circle of red (0), green (120) and blue (240). */
  private static double hue(double red, double green, double blue, double most, double range) {
    if (most == red) {
      return (60 * (green - blue) / range + 360) % 360;
    }
    return most == green ? 60 * (blue - red) / range + 120 : 60 * (red - green) / range + 240;
  }

  /** {@code #28786E, dark blue-green}. */
  public static String named(String hex) {
    return "#" + hex + ", " + of(hex);
  }
}

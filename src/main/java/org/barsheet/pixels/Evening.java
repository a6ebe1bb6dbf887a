package org.barsheet.pixels;

import java.awt.image.BufferedImage;

/** Puts a photograph into the place and the light of a first one. */
public final class Evening {

  private static final int LEVELS = 256;

  private Evening() {}

  /**
   * The photograph as the first one's camera would have seen it in the first one's light. Where it
   * shows nothing, its edge is repeated.
   *
   * @param move of its camera since the first photograph, {@link CameraMove#NONE} to leave it
   * @param light since the first photograph, {@link LightChange#NONE} to leave it
   */
  public static BufferedImage evened(ColorImage image, CameraMove move, LightChange light) {
    // Luminance is 0.2126 red, 0.7152 green and 0.0722 blue; near enough, so are its stops.
    double green = light.stops() - 0.2126 * light.redder() - 0.0722 * light.bluer();
    int[][] tables = {
      table(green + light.redder()), table(green), table(green + light.bluer()),
    };
    BufferedImage even =
        new BufferedImage(image.width(), image.height(), BufferedImage.TYPE_3BYTE_BGR);
    boolean still = move.shift() == 0 && move.turn() == 0 && move.scale() == 1;
    double middleX = image.width() / 2.0;
    double middleY = image.height() / 2.0;
    for (int y = 0; y < image.height(); y++) {
      for (int x = 0; x < image.width(); x++) {
        int rgb = 0;
        if (still) {
          rgb = image.red(x, y) << 16 | image.green(x, y) << 8 | image.blue(x, y);
        } else {
          double fromX = x + 0.5 - middleX;
          double fromY = y + 0.5 - middleY;
          rgb =
              Interpolation.color(
                  image,
                  move.x(fromX, fromY) + middleX - 0.5,
                  move.y(fromX, fromY) + middleY - 0.5);
        }
        even.setRGB(
            x,
            y,
            tables[0][rgb >> 16 & 0xFF] << 16
                | tables[1][rgb >> 8 & 0xFF] << 8
                | tables[2][rgb & 0xFF]);
      }
    }
    return even;
  }

  private static int[] table(double stops) {
    int[] table = new int[LEVELS];
    for (int level = 0; level < LEVELS; level++) {
      table[level] = (int) Math.round(Reduced.level(Reduced.linear(level) * Math.pow(2, -stops)));
    }
    return table;
  }
}

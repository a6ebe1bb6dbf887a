package org.barsheet.photographs;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** Turns a photograph as its file says (EXIF 2.32, tag Orientation, 0x0112). */
final class Turned {

  private Turned() {}

  /**
   * The image as it is to be seen.
   *
   * @param orientation 1 to 8: where the first row and the first column of the file are to be seen
   */
  static BufferedImage upright(BufferedImage image, int orientation) {
    if (orientation == 1) {
      return image;
    }
    int width = image.getWidth();
    int height = image.getHeight();
    boolean lying = orientation > 4;
    BufferedImage upright =
        new BufferedImage(
            lying ? height : width, lying ? width : height, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D pen = upright.createGraphics();
    pen.drawImage(image, transform(orientation, width, height), null);
    pen.dispose();
    return upright;
  }

  private static AffineTransform transform(int orientation, int width, int height) {
    return switch (orientation) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
      default -> new AffineTransform();
    };
  }
}

package org.barsheet.pixels;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes images as JPEG. */
public final class SmallJpeg {

  private static final int MOST_WIDE = 480;
  private static final float QUALITY = 0.72f;

  private SmallJpeg() {}

  /** A copy at most 480 pixels wide, for contact sheets and the page. */
  public static byte[] of(Reduced small) {
    int factor = Math.max(1, (small.width() + MOST_WIDE - 1) / MOST_WIDE);
    int width = Math.max(1, small.width() / factor);
    int height = Math.max(1, small.height() / factor);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int red = level(small.red(), x * factor, y * factor, factor);
        int green = level(small.green(), x * factor, y * factor, factor);
        int blue = level(small.blue(), x * factor, y * factor, factor);
        image.setRGB(x, y, red << 16 | green << 8 | blue);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      write(image, QUALITY, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static int level(Plane plane, int fromX, int fromY, int factor) {
    double sum = 0;
    for (int y = fromY; y < fromY + factor; y++) {
      for (int x = fromX; x < fromX + factor; x++) {
        sum += plane.at(x, y);
      }
    }
    return (int) Math.round(Reduced.level(sum / (factor * factor)));
  }

  /** Writes an image with a quality from 0 to 1. */
  public static void write(BufferedImage image, float quality, OutputStream out)
      throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.setOutput(to);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
  }
}

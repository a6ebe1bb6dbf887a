package org.barsheet.workbook.pen;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.barsheet.input.GivenImage;

/** A panel's drawing as the workbook holds it: a PNG drawing that is not too large. */
public final class Drawing {

  /** Larger files are made smaller, so that a workbook stays light enough to send. */
  private static final int LARGEST_BYTES = 60_000;

  private static final int SMALL_WIDTH = 360;

  private static final long PNG_SIGNATURE = 0x89504E470D0A1A0AL;

  /** Places in the header of a PNG file (W3C, Portable Network Graphics, 11.2.2). */
  private static final int PNG_WIDTH = 16;

  private static final int PNG_HEIGHT = 20;
  private static final int PNG_HEADER_END = 24;

  private final byte[] png;
  private final int width;
  private final int height;

  private Drawing(byte[] png, int width, int height) {
    this.png = png;
    this.width = width;
    this.height = height;
  }

  /** The drawing in a drawing file, or nothing where the file is no drawing Java can read. */
  public static Optional<Drawing> read(byte[] file) {
    ByteBuffer header = ByteBuffer.wrap(file);
    boolean png = file.length >= PNG_HEADER_END && header.getLong(0) == PNG_SIGNATURE;
    if (png && file.length <= LARGEST_BYTES) {
      Drawing drawing = new Drawing(file, header.getInt(PNG_WIDTH), header.getInt(PNG_HEIGHT));
      return drawing.width > 0 && drawing.height > 0 ? Optional.of(drawing) : Optional.empty();
    }
    return GivenImage.decode(file).map(Drawing::small);
  }

  private static Drawing small(BufferedImage large) {
    int width = Math.min(SMALL_WIDTH, large.getWidth());
    int height = Math.max(1, Math.round((float) large.getHeight() * width / large.getWidth()));
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = small.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(large, 0, 0, width, height, null);
    pen.dispose();
    return new Drawing(encode(small), width, height);
  }

  private static byte[] encode(BufferedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return bytes.toByteArray();
  }

  byte[] png() {
    return png.clone();
  }

  /** In pixels. */
  public int width() {
    return width;
  }

  /** In pixels. */
  public int height() {
    return height;
  }
}

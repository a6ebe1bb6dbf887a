package org.barsheet.workbook;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.Workbook;

/**
 * A panel's drawing as the workbook holds it.
 *
 * @param bytes the picture file
 * @param type its type, as the spreadsheet library numbers it
 * @param width in pixels
 * @param height in pixels
 */
record Drawing(byte[] bytes, int type, int width, int height) {

  /** Larger files are made smaller, so that a workbook stays light enough to send. */
  private static final int LARGEST_BYTES = 60_000;

  private static final int SMALL_WIDTH = 360;

  private static final long PNG_SIGNATURE = 0x89504E470D0A1A0AL;

  /** Where the header of a PNG file (W3C, Portable Network Graphics, 11.2.2) ends. */
  private static final int PNG_HEADER_END = 24;

  /** The drawing in a picture file, or nothing where the file is no picture we know. */
  static Optional<Drawing> read(byte[] file) throws IOException {
    boolean png = file.length >= PNG_HEADER_END && ByteBuffer.wrap(file).getLong() == PNG_SIGNATURE;
    if (png && file.length <= LARGEST_BYTES) {
      ByteBuffer header = ByteBuffer.wrap(file);
      return Optional.of(
              new Drawing(file, Workbook.PICTURE_TYPE_PNG, header.getInt(16), header.getInt(20)))
          .filter(drawing -> drawing.width() > 0 && drawing.height() > 0);
    }
    return Optional.ofNullable(ImageIO.read(new ByteArrayInputStream(file))).map(Drawing::small);
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
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(small, "png", bytes);
    } catch (IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
    return new Drawing(bytes.toByteArray(), Workbook.PICTURE_TYPE_PNG, width, height);
  }
}

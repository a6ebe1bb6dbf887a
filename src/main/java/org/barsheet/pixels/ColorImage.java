package org.barsheet.pixels;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;

/** A color image of 8 bits a channel. The bytes of a decoded image are looked at where they are. */
public final class ColorImage {

  private static final int BANDS = 3;

  private final int width;
  private final int height;
  private final byte[] bytes;
  private final int stride;
  private final int red;
  private final int green;
  private final int blue;

  private ColorImage(BufferedImage image) {
    PixelInterleavedSampleModel model = (PixelInterleavedSampleModel) image.getSampleModel();
    this.width = image.getWidth();
    this.height = image.getHeight();
    this.bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    this.stride = model.getScanlineStride();
    int[] bands = model.getBandOffsets();
    this.red = bands[0];
    this.green = bands[1];
    this.blue = bands[2];
  }

  /**
   * An image as it was decoded. Levels are taken as they are written: a color profile changes them
   * alike in all photographs of a camera.
   */
  public static ColorImage of(BufferedImage image) {
    return new ColorImage(isPlain(image) ? image : copied(image));
  }

  private static boolean isPlain(BufferedImage image) {
    return image.getSampleModel() instanceof PixelInterleavedSampleModel model
        && image.getRaster().getDataBuffer() instanceof DataBufferByte
        && model.getNumBands() == BANDS
        && model.getPixelStride() == BANDS
        && image.getRaster().getParent() == null;
  }

  private static BufferedImage copied(BufferedImage image) {
    BufferedImage plain =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D pen = plain.createGraphics();
    pen.drawImage(image, 0, 0, null);
    pen.dispose();
    return plain;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  int red(int x, int y) {
    return bytes[y * stride + x * BANDS + red] & 0xFF;
  }

  int green(int x, int y) {
    return bytes[y * stride + x * BANDS + green] & 0xFF;
  }

  int blue(int x, int y) {
    return bytes[y * stride + x * BANDS + blue] & 0xFF;
  }

  /** Brightness of a part, 0 to 255 (Y′ of ITU-R BT.709). What lies outside repeats the edge. */
  Plane luma(int left, int top, int wide, int high) {
    float[] values = new float[wide * high];
    for (int y = 0; y < high; y++) {
      int from = Math.max(0, Math.min(height - 1, top + y));
      for (int x = 0; x < wide; x++) {
        int column = Math.max(0, Math.min(width - 1, left + x));
        values[y * wide + x] =
            0.2126f * red(column, from)
                + 0.7152f * green(column, from)
                + 0.0722f * blue(column, from);
      }
    }
    return new Plane(wide, high, values);
  }
}

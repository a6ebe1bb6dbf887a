package org.barsheet.input;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Reads drawings that people give us; a small file may say that it unpacks to a huge one. */
public final class GivenImage {

  private GivenImage() {}

  /**
   * The drawing in a file, or nothing where the file is no drawing that Java reads, is damaged, or
   * has more than {@link Limit#DRAWING_PIXELS}.
   */
  public static Optional<BufferedImage> decode(byte[] file) {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      return readers.hasNext() ? decode(readers.next(), in) : Optional.empty();
    } catch (IOException | RuntimeException damaged) {
      // The JDK's readers trust the numbers in a file and trip over wrong ones.
      return Optional.empty();
    }
  }

  private static Optional<BufferedImage> decode(ImageReader reader, ImageInputStream in)
      throws IOException {
    try {
      reader.setInput(in, true, true);
      long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
      return pixels > Limit.DRAWING_PIXELS ? Optional.empty() : Optional.of(reader.read(0));
    } finally {
      reader.dispose();
    }
  }
}

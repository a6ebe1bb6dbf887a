package org.barsheet.photographs;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.barsheet.input.GivenImage;
import org.barsheet.photographs.PlannedSequence.Moving;
import org.barsheet.pixels.Box;
import org.barsheet.pixels.KeyMask;
import org.barsheet.pixels.SmallJpeg;

/** A small photograph as the page plays it: a JPEG, and where its hole is seen through. */
public final class SmallPhotograph {

  private static final float QUALITY = 0.68f;

  private final byte[] jpeg;
  private final Optional<byte[]> mask;

  private SmallPhotograph(byte[] jpeg, Optional<byte[]> mask) {
    this.jpeg = jpeg;
    this.mask = mask;
  }

  /**
   * Prepares one.
   *
   * @param small a JPEG of the photograph
   * @param moving what moves in it
   * @param mostWide pixels that it may be wide
   * @return nothing where the JPEG cannot be read
   */
  public static Optional<SmallPhotograph> of(byte[] small, Moving moving, int mostWide) {
    return GivenImage.decode(small)
        .map(
            image -> {
              boolean narrow = image.getWidth() <= mostWide;
              BufferedImage fitted = narrow ? image : fitted(image, mostWide);
              byte[] jpeg = narrow ? small : encoded(fitted);
              return new SmallPhotograph(jpeg, mask(fitted, moving));
            });
  }

  private static BufferedImage fitted(BufferedImage image, int width) {
    int height = Math.max(1, Math.round((float) image.getHeight() * width / image.getWidth()));
    BufferedImage fitted = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D pen = fitted.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(image, 0, 0, width, height, null);
    pen.dispose();
    return fitted;
  }

  private static byte[] encoded(BufferedImage image) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      SmallJpeg.write(image, QUALITY, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static Optional<byte[]> mask(BufferedImage image, Moving moving) {
    if (moving.view().isEmpty() || moving.backing().isEmpty()) {
      return Optional.empty();
    }
    Box hole =
        HoleGeometry.planned(moving, moving.view().get(), image.getWidth(), image.getHeight())
            .hole();
    double about = 0.15 * Math.max(hole.width(), hole.height());
    return KeyMask.of(image, hole.padded(about), moving.backing().get());
  }

  /** Its file's bytes. */
  public byte[] jpeg() {
    return jpeg.clone();
  }

  /** A PNG of the same size: white where it stays, black where it is seen through. */
  public Optional<byte[]> mask() {
    return mask.map(byte[]::clone);
  }
}

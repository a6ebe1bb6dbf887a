package org.barsheet.review;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.barsheet.input.GivenImage;

/** A panel's drawing as the page holds it: the file as it is, or a smaller copy of a large one. */
final class PageDrawing {

  /** All drawings together, so that the page can be sent by mail. */
  private static final int ALL_BYTES = 7_500_000;

  private static final int MOST_BYTES = 300_000;
  private static final int[] WIDTHS = {1280, 960, 640, 480, 320};

  private final String mediaType;
  private final byte[] bytes;

  private PageDrawing(String mediaType, byte[] bytes) {
    this.mediaType = mediaType;
    this.bytes = bytes;
  }

  /** How large one drawing may be where there are so many. */
  static int allowedBytes(int drawings) {
    return Math.min(MOST_BYTES, ALL_BYTES / Math.max(1, drawings));
  }

  /** How large one may be that cannot be made smaller: its share of the page. */
  static int shareBytes(int drawings) {
    return ALL_BYTES / Math.max(1, drawings);
  }

  /**
   * The drawing in a file, or nothing where the file is no drawing that can be shown.
   *
   * @param allowed bytes above which a smaller copy is made
   * @param share bytes up to which a file of a known kind that Java does not read, as WebP, is
   *     taken as it is
   */
  static Optional<PageDrawing> of(byte[] file, int allowed, int share) throws IOException {
    Optional<String> type = mediaType(file);
    if (type.isPresent() && file.length <= allowed) {
      return Optional.of(new PageDrawing(type.get(), file));
    }
    Optional<BufferedImage> image = GivenImage.decode(file);
    if (image.isPresent()) {
      return Optional.of(smaller(image.get(), allowed));
    }
    return type.filter(known -> file.length <= share).map(known -> new PageDrawing(known, file));
  }

  /** By the first bytes of the file, as the WHATWG's MIME Sniffing standard lists them. */
  private static Optional<String> mediaType(byte[] file) {
    String start = new String(file, 0, Math.min(file.length, 12), StandardCharsets.ISO_8859_1);
    if (start.startsWith("\u0089PNG\r\n\u001a\n")) {
      return Optional.of("image/png");
    } else if (start.startsWith("\u00ff\u00d8\u00ff")) {
      return Optional.of("image/jpeg");
    } else if (start.startsWith("GIF87a") || start.startsWith("GIF89a")) {
      return Optional.of("image/gif");
    } else if (start.startsWith("RIFF") && start.endsWith("WEBP")) {
      return Optional.of("image/webp");
    }
    return Optional.empty();
  }

  /** The widest copy that is small enough, or the narrowest of all. */
  private static PageDrawing smaller(BufferedImage large, int allowed) throws IOException {
    byte[] bytes = {};
    for (int width : WIDTHS) {
      if (width > large.getWidth() && width != WIDTHS[WIDTHS.length - 1]) {
        continue;
      }
      bytes = jpeg(large, Math.min(width, large.getWidth()));
      if (bytes.length <= allowed) {
        break;
      }
    }
    return new PageDrawing("image/jpeg", bytes);
  }

  private static byte[] jpeg(BufferedImage large, int width) throws IOException {
    int height = Math.max(1, Math.round((float) large.getHeight() * width / large.getWidth()));
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = small.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(large, 0, 0, width, height, Color.WHITE, null);
    pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(small, "jpeg", out);
    return out.toByteArray();
  }

  String mediaType() {
    return mediaType;
  }

  byte[] bytes() {
    return bytes.clone();
  }
}

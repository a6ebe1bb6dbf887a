package org.barsheet.movie;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.GivenFile;
import org.barsheet.input.GivenImage;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;

/** Drawings and photographs as they lie in their files; the last few are kept. */
final class Drawings {

  private static final int KEPT = 4;

  /** No image is kept larger than so many times the movie's width. */
  private static final int ROOM_TO_GO_NEAR = 3;

  private final int mostWide;
  private final Map<Path, Optional<BufferedImage>> kept =
      new LinkedHashMap<>(KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Path, Optional<BufferedImage>> eldest) {
          return size() > KEPT;
        }
      };

  /**
   * Images for a movie.
   *
   * @param width of its frame in pixels
   */
  Drawings(int width) {
    this.mostWide = ROOM_TO_GO_NEAR * width;
  }

  /** The image in a file; empty where Java reads none there. */
  Optional<BufferedImage> of(Path file) {
    Optional<BufferedImage> image = kept.get(file);
    if (image == null) {
      image = read(file);
      kept.put(file, image);
    }
    return image;
  }

  private Optional<BufferedImage> read(Path file) {
    try {
      return GivenImage.decode(GivenFile.bytes(file, Limit.DRAWING)).map(this::plain);
    } catch (InputException unreadable) {
      return Optional.empty();
    }
  }

  /** In plain RGB on white paper, and no larger than can be seen. */
  private BufferedImage plain(BufferedImage image) {
    double scale = Math.min(1, (double) mostWide / image.getWidth());
    int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
    int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
    BufferedImage plain = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = plain.createGraphics();
    pen.setColor(Canvas.WHITE);
    pen.fillRect(0, 0, width, height);
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(image, 0, 0, width, height, null);
    pen.dispose();
    return plain;
  }
}

package org.barsheet.movie;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.FilmFrames;

/** Single frames of a movie as images, without the strip. */
public final class Still {

  private final FilmFrames frames;
  private final BufferedImage image;
  private final ImagePainter painter;

  /**
   * Frames of a film.
   *
   * @param width of the images
   */
  public Still(FilmSheet film, int width) {
    Sizes sizes = Sizes.of(film.plan().film(), width, false);
    Drawings drawings = new Drawings(width);
    this.frames = FilmFrames.of(film, file -> drawings.of(file).isPresent());
    this.image = new BufferedImage(sizes.width(), sizes.all(), BufferedImage.TYPE_INT_RGB);
    this.painter =
        new ImagePainter(
            sizes,
            film.plan().workshop().artwork(),
            drawings,
            Material.NONE,
            new ClipShelf(Optional.empty(), Material.NONE));
  }

  /** The image of a frame; it is drawn into again for the next. */
  public BufferedImage of(long frame) {
    Graphics2D pen = image.createGraphics();
    Canvas.prepare(pen);
    painter.paint(pen, frames.at(frame));
    pen.dispose();
    return image;
  }

  /** The same image smaller, each pixel the mean of those it stands for. */
  public static BufferedImage smaller(BufferedImage image, int width, int height) {
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = small.createGraphics();
    pen.drawImage(image.getScaledInstance(width, height, Image.SCALE_AREA_AVERAGING), 0, 0, null);
    pen.dispose();
    return small;
  }
}

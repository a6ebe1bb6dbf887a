package org.barsheet.movie;

import java.awt.Graphics2D;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.FilmFrame;
import org.barsheet.frames.FilmFrames;
import org.jspecify.annotations.Nullable;

/** Draws image and strip of one frame after the other; an image that stays is not drawn again. */
final class FramePainter {

  private final FilmFrames frames;
  private final Sizes sizes;
  private final ImagePainter image;
  private final StripPainter strip;
  private final HeadPainter head;
  private @Nullable FilmFrame before;

  FramePainter(FilmSheet sheet, FilmFrames frames, Sizes sizes, ImagePainter image) {
    this.frames = frames;
    this.sizes = sizes;
    this.image = image;
    this.strip = new StripPainter(sizes);
    this.head = new HeadPainter(sheet, sizes);
  }

  /**
   * Draws a frame over the one before.
   *
   * @return whether the image is another
   */
  boolean paint(Graphics2D pen, long frame, boolean cautious) {
    if (frame < 0) {
      head.paint(pen, frame);
      if (sizes.strip() > 0) {
        strip.paintHead(pen, head.words(frame), cautious);
      }
      return true;
    }
    FilmFrame now = frames.at(frame);
    boolean fresh = !looksLike(before, now);
    if (fresh) {
      image.paint(pen, now);
    }
    if (sizes.strip() > 0) {
      strip.paint(pen, now, cautious);
    }
    before = now;
    return fresh;
  }

  /** Clips move on every frame. */
  private static boolean looksLike(@Nullable FilmFrame before, FilmFrame now) {
    return before != null
        && before.shot().index() == now.shot().index()
        && before.field().equals(now.field())
        && before.plate().equals(now.plate())
        && before.openings().equals(now.openings());
  }
}

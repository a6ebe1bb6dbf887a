package org.barsheet.movie;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.function.Supplier;
import org.barsheet.frames.FilmFrame;
import org.barsheet.frames.Plate;
import org.barsheet.plan.Rect;
import org.jspecify.annotations.Nullable;

/** What lies at the back of a shot, drawn once while the camera stands still. */
final class BackgroundCache {

  private @Nullable BufferedImage image;
  private @Nullable Plate plate;
  private @Nullable Rect field;

  void paint(Graphics2D pen, Sizes sizes, FilmFrame frame, Supplier<BufferedImage> draw) {
    BufferedImage drawn = image;
    if (drawn == null || !frame.plate().equals(plate) || !frame.field().equals(field)) {
      drawn = draw.get();
      image = drawn;
      plate = frame.plate();
      field = frame.field();
    }
    pen.drawImage(drawn, 0, 0, sizes.width(), sizes.height(), null);
  }
}

package org.barsheet.pixels;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;

/** Where a small photograph is to be seen through: its backing's color, in and about a hole. */
public final class KeyMask {

  private static final double PAPER = 0.35;
  private static final double BACKING = 0.65;
  private static final int FEWEST = 12;

  private KeyMask() {}

  /**
   * A gray PNG of the image's size: white where it stays, black where it is seen through.
   *
   * @param about the hole and a little about it, in pixels of the image
   * @param backing RRGGBB
   * @return nothing where no backing is seen
   */
  public static Optional<byte[]> of(BufferedImage image, Box about, String backing) {
    Reduced light = Reduced.of(ColorImage.of(image), image.getWidth());
    Box inside = about.within(light.width(), light.height());
    Tint gray = Tint.of(0.5, 0.5, 0.5);
    Optional<Tint> key = key(light, inside, gray, Tint.of(backing));
    if (key.isEmpty()) {
      return Optional.empty();
    }
    BufferedImage mask =
        new BufferedImage(light.width(), light.height(), BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < light.height(); y++) {
      for (int x = 0; x < light.width(); x++) {
        double way = inside.holds(x + 0.5, y + 0.5) ? gray.wayTo(key.get(), tint(light, x, y)) : 0;
        double left = 1 - Math.max(0, Math.min(1, (way - PAPER) / (BACKING - PAPER)));
        mask.getRaster().setSample(x, y, 0, (int) Math.round(255 * left));
      }
    }
    return Optional.of(png(mask));
  }

  /** The backing's tint as the photograph has it. */
  private static Optional<Tint> key(Reduced light, Box inside, Tint gray, Tint said) {
    List<Double> reds = new ArrayList<>();
    List<Double> greens = new ArrayList<>();
    for (int y = (int) inside.top(); y < (int) inside.bottom(); y++) {
      for (int x = (int) inside.left(); x < (int) inside.right(); x++) {
        Tint tint = tint(light, x, y);
        if (gray.wayTo(said, tint) > 0.5) {
          reds.add(tint.red());
          greens.add(tint.green());
        }
      }
    }
    return reds.size() < FEWEST
        ? Optional.empty()
        : Optional.of(new Tint(Robust.median(reds), Robust.median(greens)));
  }

  private static Tint tint(Reduced light, int x, int y) {
    return Tint.of(light.red().at(x, y), light.green().at(x, y), light.blue().at(x, y));
  }

  private static byte[] png(BufferedImage mask) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(mask, "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}

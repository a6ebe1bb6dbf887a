package org.barsheet.movie;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.barsheet.frames.FilmFrame;
import org.barsheet.frames.Strip;

/**
 * Draws the strip below the image: timecode, frame, panel, bar and beat, the landing on its frame,
 * and the corner that programs read.
 */
final class StripPainter {

  /** In the film's first second; the whole caution stands in the text beside the movie. */
  static final String CAUTION =
      "! Flashing images can hurt people with photosensitive epilepsy; see the text beside the"
          + " movie";

  private final Sizes sizes;
  private final Font large;
  private final Font small;
  private final double gap;

  StripPainter(Sizes sizes) {
    this.sizes = sizes;
    this.large = Canvas.bold(0.54 * sizes.strip());
    this.small = Canvas.plain(0.41 * sizes.strip());
    this.gap = 0.4 * sizes.strip();
  }

  /**
   * Draws it.
   *
   * @param cautious whether the caution takes the place of what the panel shows
   */
  void paint(Graphics2D pen, FilmFrame frame, boolean cautious) {
    String panel = "panel " + frame.strip().panel() + "  " + frame.shot().panel().action();
    paint(pen, frame.strip(), frame.shot().index() + 1, panel, cautious);
  }

  /** Draws it for a frame before the film. */
  void paintHead(Graphics2D pen, Strip strip, boolean cautious) {
    paint(pen, strip, 0, strip.panel(), cautious);
  }

  private void paint(Graphics2D pen, Strip strip, int shot, String panel, boolean cautious) {
    pen.setColor(Canvas.INK);
    pen.fillRect(0, sizes.height(), sizes.width(), sizes.strip());
    words(pen, strip, panel, cautious);
    CodeCells.draw(pen, sizes, strip.frame(), shot);
  }

  private void words(Graphics2D pen, Strip strip, String panel, boolean cautious) {
    double left = gap + text(pen, large, strip.timecode(), gap, sizes.width());
    left += gap + text(pen, small, "frame " + strip.frame(), left + gap, sizes.width());
    double right = CodeCells.left(sizes) - gap;
    if (cautious) {
      text(pen, Canvas.plain(0.34 * sizes.strip()), CAUTION, left + gap, right);
      return;
    }
    right -= textBefore(pen, large, strip.place(), right) + gap;
    if (strip.landings().isEmpty()) {
      text(pen, small, panel, left + gap, right);
    } else {
      landing(pen, "♦ " + String.join(", ", strip.landings()), left + gap, right);
    }
  }

  /** On a bright ground, so that it is told from the frames around it in gray as well. */
  private void landing(Graphics2D pen, String words, double left, double right) {
    FontMetrics letters = pen.getFontMetrics(large);
    String fitting = Canvas.fitting(words, letters, right - left - gap);
    double width = letters.stringWidth(fitting) + gap;
    pen.setColor(Canvas.LAMP);
    double inset = 0.14 * sizes.strip();
    pen.fill(
        new Rectangle2D.Double(left, sizes.height() + inset, width, sizes.strip() - 2 * inset));
    pen.setColor(Canvas.INK);
    pen.setFont(large);
    pen.drawString(fitting, (float) (left + gap / 2), baseline(letters));
  }

  private double text(Graphics2D pen, Font font, String words, double left, double right) {
    FontMetrics letters = pen.getFontMetrics(font);
    String fitting = Canvas.fitting(words, letters, right - left);
    pen.setColor(Canvas.WHITE);
    pen.setFont(font);
    pen.drawString(fitting, (float) left, baseline(letters));
    return letters.stringWidth(fitting);
  }

  private double textBefore(Graphics2D pen, Font font, String words, double right) {
    double width = pen.getFontMetrics(font).stringWidth(words);
    text(pen, font, words, right - width, right + 1);
    return width;
  }

  private float baseline(FontMetrics letters) {
    double middle = sizes.height() + sizes.strip() / 2.0;
    return (float) (middle + (letters.getAscent() - letters.getDescent()) / 2.0);
  }
}

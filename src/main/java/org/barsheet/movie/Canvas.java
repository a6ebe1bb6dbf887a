package org.barsheet.movie;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** Inks, letters and pens that all drawn frames share. */
final class Canvas {

  static final Color INK = new Color(0x1B1F24);
  static final Color PAPER = new Color(0xFBF9F3);
  static final Color WHITE = Color.WHITE;
  static final Color PENCIL = new Color(0xB4BCC4);
  static final Color LAMP = new Color(0xE69F00);

  /** Liberation Sans has the widths of Arial; Java takes its own where neither is there. */
  private static final String FAMILY = "Liberation Sans";

  private static final String CUT_OFF = "…";

  private Canvas() {}

  /** Smooth edges and letters, the same on every run. */
  static void prepare(Graphics2D pen) {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
  }

  static Font bold(double points) {
    return new Font(FAMILY, Font.BOLD, 1).deriveFont((float) points);
  }

  static Font plain(double points) {
    return new Font(FAMILY, Font.PLAIN, 1).deriveFont((float) points);
  }

  static BasicStroke line(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  }

  /** A line of short strokes: it is told from a whole one without color. */
  static BasicStroke dashes(double width) {
    float dash = (float) (4 * width);
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {dash}, 0);
  }

  /** The beginning of a text that fits into a width. */
  static String fitting(String text, FontMetrics letters, double width) {
    if (letters.stringWidth(text) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 0 && letters.stringWidth(text.substring(0, end).strip() + CUT_OFF) > width) {
      end = text.offsetByCodePoints(end, -1);
    }
    return end == 0 ? "" : text.substring(0, end).strip() + CUT_OFF;
  }
}

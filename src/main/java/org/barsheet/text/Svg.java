package org.barsheet.text;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Builds a drawing at true size: one unit of the drawing is one millimeter on paper. Every text a
 * person typed goes through one escape.
 */
public final class Svg {

  /** Places of a coordinate: thousandths of a millimeter. */
  private static final int DECIMALS = 3;

  private static final String STYLE =
      """
      <style>
      line, path, rect { stroke: #1B1F24; stroke-width: 0.2; fill: none }
      .heavy { stroke-width: 0.4 } .light { stroke: #5B6570; stroke-width: 0.12 } .ray { stroke-width: 0.12 }
      .cut { stroke-dasharray: 1.6 1.2 }
      text { font-family: Arial, "Liberation Sans", sans-serif; font-size: 3px; fill: #1B1F24 }
      .title { font-size: 5.6px; font-weight: bold } .head { font-size: 3.9px; font-weight: bold }
      .number { font-size: 2.9px } .bold { font-weight: bold } .middle { text-anchor: middle }
      .end { text-anchor: end }
      </style>
      """;

  private final StringBuilder drawing = new StringBuilder();

  /** Begins a drawing of a size in millimeters. */
  public Svg(String title, double width, double height) {
    drawing
        .append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(number(width))
        .append("mm\" height=\"")
        .append(number(height))
        .append("mm\" viewBox=\"0 0 ")
        .append(number(width))
        .append(' ')
        .append(number(height))
        .append("\">\n<title>")
        .append(Html.escaped(title))
        .append("</title>\n")
        .append(STYLE)
        .append("<rect width=\"100%\" height=\"100%\" style=\"fill: #FFFFFF; stroke: none\"/>\n");
  }

  /** A line from one point to another. */
  public Svg line(String look, double x1, double y1, double x2, double y2) {
    return line(look, "", x1, y1, x2, y2);
  }

  /**
   * A line that says what it stands for.
   *
   * @param data attributes of it, from {@link #data}
   */
  public Svg line(String look, String data, double x1, double y1, double x2, double y2) {
    drawing.append("<line class=\"").append(look).append('"').append(data);
    attribute("x1", x1).attribute("y1", y1).attribute("x2", x2).attribute("y2", y2);
    drawing.append("/>\n");
    return this;
  }

  /** A rectangle. */
  public Svg rect(String look, double x, double y, double width, double height) {
    drawing.append("<rect class=\"").append(look).append('"');
    attribute("x", x).attribute("y", y).attribute("width", width).attribute("height", height);
    drawing.append("/>\n");
    return this;
  }

  /** Part of a circle, from one angle to another in degrees; 0 points right, 90 up. */
  public Svg arc(String look, double x, double y, double radius, double from, double to) {
    drawing.append("<path class=\"").append(look).append("\" d=\"M ");
    drawing.append(number(x + radius * cos(from))).append(' ');
    drawing.append(number(y - radius * sin(from))).append(" A ");
    drawing.append(number(radius)).append(' ').append(number(radius));
    drawing.append(" 0 0 0 ").append(number(x + radius * cos(to))).append(' ');
    drawing.append(number(y - radius * sin(to))).append("\"/>\n");
    return this;
  }

  /** Words whose base line begins, ends or lies centered at a point, as the look says. */
  public Svg text(String look, double x, double y, String words) {
    return text(look, x, y, 0, words);
  }

  /** Words turned about their point by degrees, anticlockwise. */
  public Svg text(String look, double x, double y, double turned, String words) {
    drawing.append("<text class=\"").append(look).append('"');
    attribute("x", x).attribute("y", y);
    if (turned != 0) {
      drawing.append(" transform=\"rotate(").append(number(-turned)).append(' ');
      drawing.append(number(x)).append(' ').append(number(y)).append(")\"");
    }
    drawing.append('>').append(Html.escaped(words)).append("</text>\n");
    return this;
  }

  /** An attribute that tells a reader of the drawing what a mark stands for. */
  public static String data(String name, String value) {
    return " data-" + name + "=\"" + Html.escaped(value) + "\"";
  }

  private Svg attribute(String name, double value) {
    drawing.append(' ').append(name).append("=\"").append(number(value)).append('"');
    return this;
  }

  /** Cosine of an angle in degrees. */
  public static double cos(double degrees) {
    return StrictMath.cos(StrictMath.toRadians(degrees));
  }

  /** Sine of an angle in degrees. */
  public static double sin(double degrees) {
    return StrictMath.sin(StrictMath.toRadians(degrees));
  }

  private static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** The finished drawing. */
  @Override
  public String toString() {
    return drawing + "</svg>\n";
  }
}

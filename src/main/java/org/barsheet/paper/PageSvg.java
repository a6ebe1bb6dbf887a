package org.barsheet.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.barsheet.text.Html;

/** A page as a drawing in SVG 1.1 (W3C), one unit of which is one millimeter on paper. */
public final class PageSvg {

  private static final int DECIMALS = 3;

  private final StringBuilder svg = new StringBuilder();

  private PageSvg() {}

  /** The whole drawing. */
  public static String of(PaperPage page) {
    PageSvg drawing = new PageSvg();
    drawing.begin(page);
    page.inks().forEach(drawing::draw);
    return drawing.svg.append("</svg>\n").toString();
  }

  private void begin(PaperPage page) {
    String width = number(page.width());
    String height = number(page.height());
    svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\"");
    svg.append(" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " + height + "\">\n");
    svg.append("<title>" + Html.escaped(page.title()) + "</title>\n<style>\n");
    svg.append("line, circle { fill: none }\n");
    for (Stroke stroke : Stroke.values()) {
      svg.append("." + stroke.look() + " { stroke: #" + stroke.color());
      svg.append("; stroke-width: " + number(stroke.weight()));
      if (!stroke.dashes().isEmpty()) {
        svg.append("; stroke-dasharray: " + stroke.dashes());
      }
      svg.append(" }\n");
    }
    svg.append("text { font-family: Arial, \"Liberation Sans\", sans-serif }\n</style>\n");
    svg.append("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#FFFFFF\"/>\n");
  }

  private void draw(Ink ink) {
    if (ink instanceof Ink.Line line) {
      svg.append("<line class=\"" + line.stroke().look() + "\"");
      attribute("x1", line.x1()).attribute("y1", line.y1());
      attribute("x2", line.x2()).attribute("y2", line.y2());
      svg.append("/>\n");
    } else if (ink instanceof Ink.Ring ring) {
      svg.append("<circle class=\"" + ring.stroke().look() + "\"");
      attribute("cx", ring.x()).attribute("cy", ring.y()).attribute("r", ring.radius());
      svg.append("/>\n");
    } else if (ink instanceof Ink.Patch patch) {
      svg.append("<rect");
      attribute("x", patch.x()).attribute("y", patch.y());
      attribute("width", patch.width()).attribute("height", patch.height());
      svg.append(" fill=\"#" + patch.color() + "\"/>\n");
    } else if (ink instanceof Ink.Words words) {
      words(words);
    }
  }

  private void words(Ink.Words words) {
    svg.append("<text");
    attribute("x", words.x()).attribute("y", words.y());
    attribute("font-size", words.points() * Ink.Words.MILLIMETERS_PER_POINT);
    if (words.bold()) {
      svg.append(" font-weight=\"bold\"");
    }
    if (words.gray()) {
      svg.append(" fill=\"#" + words.color() + "\"");
    }
    switch (words.align()) {
      case START -> {}
      case MIDDLE -> svg.append(" text-anchor=\"middle\"");
      case END -> svg.append(" text-anchor=\"end\"");
    }
    if (words.turned() != 0) {
      svg.append(" transform=\"rotate(" + number(-words.turned()) + " " + number(words.x()));
      svg.append(" " + number(words.y()) + ")\"");
    }
    svg.append(">" + Html.escaped(words.words()) + "</text>\n");
  }

  private PageSvg attribute(String name, double value) {
    svg.append(" " + name + "=\"" + number(value) + "\"");
    return this;
  }

  private static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}

package org.barsheet.handoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import org.barsheet.artwork.ArtworkMap;
import org.barsheet.artwork.MapMark;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Artwork;
import org.barsheet.text.Html;

/**
 * The map of the artwork as one printable page in SVG 1.1 (W3C), in black and grays, with a bar of
 * 100 mm to check that the printer keeps the scale.
 */
final class ArtworkSvg {

  private static final double MARGIN = 12;
  private static final double HEADING = 17;
  private static final double FOOT = 24;
  private static final double MILLIMETERS_PER_POINT = 25.4 / 72;

  /** From the middle of a line of letters down to its foot, as a share of their size. */
  private static final double HALF_LETTER = 0.35;

  private final FilmSheet sheet;
  private final double width;
  private final double height;
  private final StringBuilder svg = new StringBuilder();

  private ArtworkSvg(FilmSheet sheet) {
    this.sheet = sheet;
    this.width = sheet.plan().film().paper().height();
    this.height = sheet.plan().film().paper().width();
  }

  static byte[] bytes(FilmSheet sheet) {
    return new ArtworkSvg(sheet).page().getBytes(StandardCharsets.UTF_8);
  }

  private String page() {
    Artwork artwork = sheet.plan().workshop().artwork();
    ArtworkMap map =
        ArtworkMap.within(
            artwork,
            sheet.plan().workshop().openings(),
            width - 2 * MARGIN,
            height - 2 * MARGIN - HEADING - FOOT);
    svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + mm(width) + "mm\" height=\"");
    svg.append(mm(height) + "mm\" viewBox=\"0 0 " + mm(width) + " " + mm(height) + "\"");
    svg.append(" font-family=\"Arial, 'Liberation Sans', sans-serif\" fill=\"#000000\">\n");
    svg.append("<title>" + Html.escaped(sheet.plan().title() + ": artwork") + "</title>\n");
    svg.append(
        "<rect width=\"" + mm(width) + "\" height=\"" + mm(height) + "\" fill=\"#FFFFFF\"/>\n");
    heading(artwork, map);
    svg.append("<g transform=\"translate(" + mm((width - map.width()) / 2) + " ");
    svg.append(mm(MARGIN + HEADING) + ")\">\n");
    map.marks().forEach(this::mark);
    svg.append("</g>\n");
    foot(map);
    return svg.append("</svg>\n").toString();
  }

  private void heading(Artwork artwork, ArtworkMap map) {
    left(MARGIN, MARGIN + 5, "Artwork", 16, true);
    left(MARGIN, MARGIN + 10.5, sheet.plan().title(), 9, false);
    String paper =
        FilmWords.decimal(artwork.squaresWide())
            + " by "
            + FilmWords.decimal(artwork.squaresHigh())
            + " squares of "
            + FilmWords.decimal(artwork.squareMillimeters())
            + " mm";
    String scale =
        "drawn 1 : "
            + FilmWords.decimal(map.denominator())
            + ", one square here "
            + mm(artwork.squareMillimeters() / map.denominator())
            + " mm";
    right(MARGIN + 5, paper, 9);
    right(MARGIN + 10.5, scale, 9);
  }

  private void foot(ArtworkMap map) {
    double top = MARGIN + HEADING + map.height() + 7;
    for (int line = 0; line < map.legend().size(); line++) {
      left(MARGIN, top + line * 4.2, map.legend().get(line), 9, false);
    }
    double bar = width - MARGIN - 100;
    stroke(bar, top, bar + 100, top, 0.5, "#000000");
    for (int tick = 0; tick <= 10; tick++) {
      stroke(bar + 10 * tick, top - (tick % 5 == 0 ? 2 : 1), bar + 10 * tick, top, 0.25, "#000000");
    }
    right(
        top + 5,
        "this bar is 100 mm long: print at 100 %, and measure it before you trust the map",
        9);
  }

  private void mark(MapMark mark) {
    if (mark instanceof MapMark.Box box) {
      svg.append("<rect x=\"" + mm(box.rect().left()) + "\" y=\"" + mm(box.rect().top()));
      svg.append("\" width=\"" + mm(box.rect().width()) + "\" height=\"" + mm(box.rect().height()));
      svg.append("\" fill=\"" + (box.opaque() ? "#FFFFFF" : "none") + "\" stroke=\"#000000\"");
      svg.append(" stroke-width=\"" + mm(box.weight()) + "\"/>\n");
    } else if (mark instanceof MapMark.Stroke s) {
      stroke(s.fromX(), s.fromY(), s.toX(), s.toY(), s.weight(), s.gray() ? "#B0B0B0" : "#000000");
      if (s.arrow()) {
        head(s);
      }
    } else if (mark instanceof MapMark.Ring ring) {
      svg.append("<circle cx=\"" + mm(ring.x()) + "\" cy=\"" + mm(ring.y()) + "\" r=\"");
      svg.append(mm(ring.radius()) + "\" fill=\"" + (ring.solid() ? "#000000" : "none"));
      svg.append("\" stroke=\"#000000\" stroke-width=\"" + mm(ring.weight()) + "\"/>\n");
    } else if (mark instanceof MapMark.Text text) {
      double size = text.points() * MILLIMETERS_PER_POINT;
      String halo = " paint-order=\"stroke\" stroke=\"#FFFFFF\" stroke-width=\"0.8\"";
      text(
          text.x(), text.y() + HALF_LETTER * size, text.words(), size, text.bold(), "middle", halo);
    }
  }

  private void stroke(double x1, double y1, double x2, double y2, double weight, String color) {
    svg.append("<line x1=\"" + mm(x1) + "\" y1=\"" + mm(y1) + "\" x2=\"" + mm(x2) + "\" y2=\"");
    svg.append(mm(y2) + "\" stroke=\"" + color + "\" stroke-width=\"" + mm(weight) + "\"/>\n");
  }

  /** The head of an arrow at the end of a stroke. */
  private void head(MapMark.Stroke stroke) {
    double length = StrictMath.hypot(stroke.toX() - stroke.fromX(), stroke.toY() - stroke.fromY());
    double alongX = (stroke.toX() - stroke.fromX()) / length;
    double alongY = (stroke.toY() - stroke.fromY()) / length;
    double size = 1.6;
    double backX = stroke.toX() - size * alongX;
    double backY = stroke.toY() - size * alongY;
    double half = size * 0.4;
    svg.append("<path d=\"M " + mm(stroke.toX()) + " " + mm(stroke.toY()));
    svg.append(" L " + mm(backX - half * alongY) + " " + mm(backY + half * alongX));
    svg.append(" L " + mm(backX + half * alongY) + " " + mm(backY - half * alongX) + " Z\"/>\n");
  }

  private void left(double x, double y, String words, double points, boolean bold) {
    text(x, y, words, points * MILLIMETERS_PER_POINT, bold, "start", "");
  }

  private void right(double y, String words, double points) {
    text(width - MARGIN, y, words, points * MILLIMETERS_PER_POINT, false, "end", "");
  }

  private void text(
      double x, double y, String words, double size, boolean bold, String anchor, String more) {
    svg.append("<text x=\"" + mm(x) + "\" y=\"" + mm(y) + "\" font-size=\"" + mm(size) + "\"");
    svg.append((bold ? " font-weight=\"bold\"" : "") + " text-anchor=\"" + anchor + "\"" + more);
    svg.append(">" + Html.escaped(words) + "</text>\n");
  }

  /** Millimeters to a thousandth. */
  private static String mm(double amount) {
    BigDecimal rounded = BigDecimal.valueOf(amount).setScale(3, RoundingMode.HALF_UP);
    return FilmWords.plain(rounded).toPlainString();
  }
}

package org.barsheet.handoff.card;

import java.util.List;
import org.barsheet.text.Svg;

/**
 * A protractor to stand at the end of a hinge: the table is its base, the hinge its middle, and
 * each photograph has its angle.
 */
final class Protractor {

  /** Outer radius of the marks in millimeters: half a degree is 0.7 mm there or a little less. */
  private static final double QUARTER_RADIUS = 80;

  private static final double HALF_RADIUS = 70;

  private static final double TICK = 5;
  private static final double ROUND_TICK = 8;

  /** From the marks to the labels. */
  private static final double TO_LABEL = 8;

  /** Room a label takes along its circle, in millimeters. */
  private static final double LABEL_ROOM = 3.2;

  /** How far labels may stand beyond upright, in degrees, where the table does not cut them off. */
  private static final double BEYOND = 4;

  /** From the middle of a label to its base line, in degrees. */
  private static final double HALF_A_DIGIT = 0.55;

  /** Beyond the base on either side, for labels that are moved apart. */
  private static final double MARGIN = 10;

  private static final double RIGHT_ANGLE = 90;

  private final List<Tick> ticks;
  private final double whole;
  private final double radius;
  private final double labels;
  private final double gap;

  Protractor(List<Tick> ticks) {
    this.ticks = ticks;
    boolean isHalf = ticks.stream().anyMatch(tick -> tick.at().doubleValue() > RIGHT_ANGLE);
    this.whole = isHalf ? 2 * RIGHT_ANGLE : RIGHT_ANGLE;
    this.radius = isHalf ? HALF_RADIUS : QUARTER_RADIUS;
    this.labels = radius + TO_LABEL;
    this.gap = StrictMath.toDegrees(LABEL_ROOM / labels);
  }

  /** How much of the page it fills, downwards. */
  double height() {
    return labels + 2 * MARGIN;
  }

  /** Draws it with its upper left corner at a point. */
  void draw(Svg svg, double left, double top) {
    double side = whole > RIGHT_ANGLE ? labels + MARGIN : MARGIN;
    double x = left + side;
    double y = top + labels + MARGIN;
    svg.arc("heavy", x, y, radius, 0, whole);
    svg.rect("cut", x - side, top, side + labels + MARGIN, labels + MARGIN);
    svg.line("heavy", x - side, y, x + labels + MARGIN, y);
    svg.line("light", x, y, x, y - radius);
    svg.line("heavy", x, y - 4, x, y + 2);
    svg.text("head", x + 3, y - 8, "hinge at the long mark,");
    svg.text("head", x + 3, y - 3, "this edge on the table");
    ticks.forEach(tick -> mark(svg, tick, x, y));
    label(svg, Tick.labeled(ticks, (int) (whole / gap)), x, y);
  }

  private void mark(Svg svg, Tick tick, double x, double y) {
    double at = tick.at().doubleValue();
    double from = radius - (tick.isRound() ? ROUND_TICK : TICK);
    String data =
        Svg.data("photograph", tick.label()) + Svg.data("degrees", tick.at().toPlainString());
    svg.line(
        tick.isRound() ? "tick heavy" : "tick",
        data,
        x + from * Svg.cos(at),
        y - from * Svg.sin(at),
        x + radius * Svg.cos(at),
        y - radius * Svg.sin(at));
  }

  private void label(Svg svg, List<Tick> ticks, double x, double y) {
    List<Double> wanted = ticks.stream().map(tick -> tick.at().doubleValue()).toList();
    double most = whole > RIGHT_ANGLE ? whole - gap / 2 : whole + BEYOND;
    List<Double> places = Spread.apart(wanted, gap, gap / 2, most);
    for (int i = 0; i < ticks.size(); i++) {
      double at = wanted.get(i);
      double to = places.get(i);
      double near = labels - 0.8;
      svg.line(
          "light",
          x + radius * Svg.cos(at),
          y - radius * Svg.sin(at),
          x + near * Svg.cos(to),
          y - near * Svg.sin(to));
      double below = to - HALF_A_DIGIT;
      svg.text(
          ticks.get(i).isRound() ? "number bold" : "number",
          x + labels * Svg.cos(below),
          y - labels * Svg.sin(below),
          to,
          ticks.get(i).label());
    }
  }
}

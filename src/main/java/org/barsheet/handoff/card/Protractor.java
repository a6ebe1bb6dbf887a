package org.barsheet.handoff.card;

import java.util.List;
import org.barsheet.text.Svg;

/**
 * A protractor to stand at the end of a hinge: the table is its base, the hinge its middle, and
 * each photograph has its angle. Rays lead from inside the flap's way to the marks on the rim; a
 * flap too small for rays close together gets a pointer that reaches the rim.
 */
final class Protractor {

  /** Radius of the rim in millimeters: half a degree is 0.7 mm there or a little less. */
  private static final double QUARTER_RADIUS = 80;

  private static final double HALF_RADIUS = 70;

  /** The largest that fits on the page where marks are closer, steps with it. */
  private static final double LARGEST_QUARTER = 140;

  private static final double HALF_WITH_STEPS = 60;

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

  /** Below the table's line: how to use it, and the pointer where there is one. */
  private static final double WORDS = 6;

  private static final double POINTER = 8;

  private static final double RIGHT_ANGLE = 90;

  private final ProtractorUse use;
  private final List<Steps.Place> places;
  private final List<Double> begin;
  private final double whole;
  private final double radius;
  private final double labels;
  private final double gap;

  Protractor(List<Tick> ticks, ProtractorUse use) {
    this.use = use;
    boolean isHalf = ticks.stream().anyMatch(tick -> degrees(tick) > RIGHT_ANGLE);
    this.whole = isHalf ? 2 * RIGHT_ANGLE : RIGHT_ANGLE;
    this.radius = radius(ticks, isHalf);
    double inside = radius - ROUND_TICK;
    this.places = Steps.of(ticks, tick -> inside * StrictMath.toRadians(degrees(tick)));
    this.begin = Rays.begin(places.stream().map(place -> degrees(place.tick())).toList());
    this.labels = radius + (Steps.count(places) - 1) * Steps.HIGH + TO_LABEL;
    this.gap = StrictMath.toDegrees(LABEL_ROOM / labels);
  }

  private static double degrees(Tick tick) {
    return tick.at().doubleValue();
  }

  /** As small as keeps the marks apart where they begin. */
  private static double radius(List<Tick> ticks, boolean isHalf) {
    double closest = 2 * RIGHT_ANGLE;
    for (int i = 1; i < ticks.size(); i++) {
      closest = Math.min(closest, degrees(ticks.get(i)) - degrees(ticks.get(i - 1)));
    }
    double apart = ROUND_TICK + 1.001 * Steps.LEAST / StrictMath.toRadians(closest);
    if (isHalf) {
      return apart <= HALF_RADIUS ? HALF_RADIUS : HALF_WITH_STEPS;
    }
    return Math.max(QUARTER_RADIUS, Math.min(apart, LARGEST_QUARTER));
  }

  /** Whether some rays begin beyond the flap, so that only a pointer reaches them. */
  private boolean needsPointer() {
    return begin.stream().anyMatch(from -> from > use.flap() - 1);
  }

  /** How much of the page it fills, downwards. */
  double height() {
    return labels + MARGIN + WORDS + (needsPointer() ? POINTER + 3 : 0);
  }

  /** Draws it with its upper left corner at a point. */
  void draw(Svg svg, double left, double top) {
    double beside = whole > RIGHT_ANGLE ? labels + MARGIN : MARGIN;
    double wide = beside + labels + MARGIN;
    double x = left + (use.isMirrored() ? wide - beside : beside);
    double y = top + labels + MARGIN;
    svg.arc(
        "heavy",
        x,
        y,
        radius,
        use.isMirrored() ? 2 * RIGHT_ANGLE - whole : 0,
        use.isMirrored() ? 2 * RIGHT_ANGLE : whole);
    svg.rect("cut", left, top, wide, labels + MARGIN);
    svg.line("heavy", left, y, left + wide, y);
    svg.line("heavy", x, y - 3, x, y + 2);
    words(svg, left, x, y);
    for (int i = 0; i < places.size(); i++) {
      mark(svg, places.get(i), begin.get(i), x, y);
    }
    label(svg, Steps.labeled(places, (int) (whole / gap)), x, y);
  }

  private void words(Svg svg, double left, double x, double y) {
    String how =
        "Stand it at "
            + use.end()
            + ", printed side away from the flap, this edge on the table, the long mark at the hinge.";
    svg.text("", left, y + 4.5, how);
    if (whole <= RIGHT_ANGLE) {
      double beside = use.isMirrored() ? x + 4 : x - 2.5;
      svg.text("", beside, y - 4, RIGHT_ANGLE, "hinge of " + use.name());
    }
    if (needsPointer()) {
      double top = y + WORDS + 1;
      svg.rect("cut pointer", left, top, labels, POINTER);
      svg.text("", left + 2, top + 5, "Pointer: flat on the flap, this end at the hinge.");
    }
  }

  /** Across from the hinge: the other way where it is mirrored. */
  private double across(double length, double degrees) {
    return (use.isMirrored() ? -length : length) * Svg.cos(degrees);
  }

  private void line(
      Svg svg, String look, String data, double x, double y, double at, double from, double to) {
    svg.line(
        look,
        data,
        x + across(from, at),
        y - from * Svg.sin(at),
        x + across(to, at),
        y - to * Svg.sin(at));
  }

  private void mark(Svg svg, Steps.Place place, double begins, double x, double y) {
    Tick tick = place.tick();
    double at = degrees(tick);
    String data =
        Svg.data("photograph", tick.label()) + Svg.data("degrees", tick.at().toPlainString());
    double rim = radius + place.step() * Steps.HIGH;
    double alone = tick.isRound() ? ROUND_TICK : TICK;
    double from = rim - (place.step() == 0 ? alone : Steps.MARK);
    line(svg, tick.isRound() ? "tick heavy" : "tick", data, x, y, at, from, rim);
    if (begins < radius - alone) {
      line(svg, "ray", data, x, y, at, begins, radius - alone);
    }
  }

  private void label(Svg svg, List<Steps.Place> labeled, double x, double y) {
    List<Double> wanted = labeled.stream().map(place -> degrees(place.tick())).toList();
    double most = whole > RIGHT_ANGLE ? whole - gap / 2 : whole + BEYOND;
    List<Double> places = Spread.apart(wanted, gap, gap / 2, most);
    for (int i = 0; i < labeled.size(); i++) {
      double at = wanted.get(i);
      double to = places.get(i);
      double near = labels - 0.8;
      double rim = radius + labeled.get(i).step() * Steps.HIGH;
      svg.line(
          "light",
          x + across(rim, at),
          y - rim * Svg.sin(at),
          x + across(near, to),
          y - near * Svg.sin(to));
      number(svg, labeled.get(i).tick(), to, x, y);
    }
  }

  private void number(Svg svg, Tick tick, double at, double x, double y) {
    double below = at - HALF_A_DIGIT;
    svg.text(
        (tick.isRound() ? "number bold" : "number") + (use.isMirrored() ? " end" : ""),
        x + across(labels, below),
        y - labels * Svg.sin(below),
        use.isMirrored() ? -at : at,
        tick.label());
  }
}

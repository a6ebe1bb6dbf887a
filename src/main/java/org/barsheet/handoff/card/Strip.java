package org.barsheet.handoff.card;

import java.util.List;
import org.barsheet.text.Svg;

/**
 * A strip of paper with a mark for each photograph, so many millimeters from its end. One longer
 * than the page comes in parts that are joined.
 */
final class Strip {

  /** Longest part in millimeters. */
  static final double PART = 180;

  private static final double TITLE = 5;
  private static final double BODY = 9;
  private static final double TICK = 5;
  private static final double ROUND_TICK = 9;
  private static final double LABELS = 12.5;

  /** Room a label takes along the strip. */
  private static final double LABEL_GAP = 2.7;

  /** How far labels may stand beyond the longest part. */
  private static final double LABEL_MARGIN = 5;

  private static final int MOST_LABELS = 64;

  private final String measure;
  private final String title;
  private final String zero;
  private final List<Steps.Place> places;
  private final int steps;

  /**
   * A strip.
   *
   * @param measure what it measures, for readers of the drawing: "height"
   * @param title how to use it
   * @param zero what stands at its end
   * @param ticks in ascending order, none below 0
   */
  Strip(String measure, String title, String zero, List<Tick> ticks) {
    this.measure = measure;
    this.title = title;
    this.zero = zero;
    this.places = Steps.of(ticks, tick -> tick.at().doubleValue());
    this.steps = Steps.count(places);
  }

  private double longest() {
    return places.get(places.size() - 1).tick().at().doubleValue();
  }

  /** Height of one part on the page, title with it. */
  double height() {
    return TITLE + body() + LABELS + 1.5;
  }

  /** Height of what bears the marks: where some stand on steps, as high as those. */
  private double body() {
    return steps == 1 ? BODY : steps * Steps.HIGH;
  }

  int parts() {
    return Math.max(1, (int) Math.ceil(longest() / PART));
  }

  /** Draws one of its parts, from 0, with its zero at a point of the left margin. */
  void draw(Svg svg, int part, double left, double top) {
    double from = part * PART;
    double base = top + TITLE + body();
    List<Steps.Place> here = placesOf(part);
    String joined = parts() == 1 ? "" : ", part " + (part + 1) + " of " + parts();
    String start = part == 0 ? zero : "joins the part before at " + Math.round(from) + " mm";
    svg.text("head", left, top + 2.5, title + joined + ": this end " + start);
    here.forEach(place -> mark(svg, place, from, left, base));
    double lastLabel = label(svg, Steps.labeled(here, MOST_LABELS), from, left, base);
    double end = Math.max(left + Math.min(longest() - from, PART), lastLabel + LABEL_MARGIN);
    svg.rect("cut", left, top + TITLE, end - left, body() + LABELS);
    svg.line("heavy", left, top + TITLE - 1, left, base + LABELS + 1);
    if (part + 1 < parts()) {
      svg.line("heavy", left + PART, top + TITLE, left + PART, base + LABELS);
    }
  }

  private List<Steps.Place> placesOf(int part) {
    double from = part * PART;
    return places.stream()
        .filter(place -> place.tick().at().doubleValue() > from || part == 0)
        .filter(place -> place.tick().at().doubleValue() <= from + PART)
        .toList();
  }

  private void mark(Svg svg, Steps.Place place, double from, double left, double base) {
    Tick tick = place.tick();
    String data =
        Svg.data("photograph", tick.label())
            + Svg.data("measure", measure)
            + Svg.data("part-from", Long.toString(Math.round(from)))
            + Svg.data("mm", tick.at().toPlainString());
    double x = left + tick.at().doubleValue() - from;
    double foot = base - place.step() * Steps.HIGH;
    double alone = tick.isRound() ? ROUND_TICK : TICK;
    double length = steps == 1 ? alone : Steps.MARK;
    svg.line(tick.isRound() ? "tick heavy" : "tick", data, x, foot - length, x, foot);
  }

  /** Labels marks, and says where the last label stands. */
  private static double label(
      Svg svg, List<Steps.Place> labeled, double from, double left, double base) {
    List<Double> wanted =
        labeled.stream().map(place -> left + place.tick().at().doubleValue() - from).toList();
    List<Double> places =
        Spread.apart(wanted, LABEL_GAP, left + LABEL_GAP / 2, left + PART + LABEL_MARGIN);
    for (int i = 0; i < labeled.size(); i++) {
      Tick tick = labeled.get(i).tick();
      double foot = base - labeled.get(i).step() * Steps.HIGH;
      svg.line("light", wanted.get(i), foot, places.get(i), base + 3);
      String look = tick.isRound() ? "number bold end" : "number end";
      svg.text(look, places.get(i) + 0.9, base + 3.6, 90, tick.label());
    }
    return places.isEmpty() ? left : places.get(places.size() - 1);
  }
}

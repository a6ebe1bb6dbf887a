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

  /** Height of one part on the page, title with it. */
  static final double HIGH = 28;

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
  private final List<Tick> ticks;

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
    this.ticks = List.copyOf(ticks);
  }

  private double longest() {
    return ticks.get(ticks.size() - 1).at().doubleValue();
  }

  int parts() {
    return Math.max(1, (int) Math.ceil(longest() / PART));
  }

  /** Draws one of its parts, from 0, with its zero at a point of the left margin. */
  void draw(Svg svg, int part, double left, double top) {
    double from = part * PART;
    double base = top + TITLE + BODY;
    List<Tick> here = ticksOf(part);
    String joined = parts() == 1 ? "" : ", part " + (part + 1) + " of " + parts();
    String start = part == 0 ? zero : "joins the part before at " + Math.round(from) + " mm";
    svg.text("head", left, top + 2.5, title + joined + ": this end " + start);
    here.forEach(tick -> mark(svg, tick, from, left, base));
    double lastLabel = label(svg, Tick.labeled(here, MOST_LABELS), from, left, base);
    double end = Math.max(left + Math.min(longest() - from, PART), lastLabel + LABEL_MARGIN);
    svg.rect("cut", left, top + TITLE, end - left, BODY + LABELS);
    svg.line("heavy", left, top + TITLE - 1, left, base + LABELS + 1);
    if (part + 1 < parts()) {
      svg.line("heavy", left + PART, top + TITLE, left + PART, base + LABELS);
    }
  }

  private List<Tick> ticksOf(int part) {
    double from = part * PART;
    return ticks.stream()
        .filter(tick -> tick.at().doubleValue() > from || part == 0)
        .filter(tick -> tick.at().doubleValue() <= from + PART)
        .toList();
  }

  private void mark(Svg svg, Tick tick, double from, double left, double base) {
    String data =
        Svg.data("photograph", tick.label())
            + Svg.data("measure", measure)
            + Svg.data("part-from", Long.toString(Math.round(from)))
            + Svg.data("mm", tick.at().toPlainString());
    double x = left + tick.at().doubleValue() - from;
    double length = tick.isRound() ? ROUND_TICK : TICK;
    svg.line(tick.isRound() ? "tick heavy" : "tick", data, x, base - length, x, base);
  }

  /** Labels marks, and says where the last label stands. */
  private static double label(Svg svg, List<Tick> ticks, double from, double left, double base) {
    List<Double> wanted =
        ticks.stream().map(tick -> left + tick.at().doubleValue() - from).toList();
    List<Double> places =
        Spread.apart(wanted, LABEL_GAP, left + LABEL_GAP / 2, left + PART + LABEL_MARGIN);
    for (int i = 0; i < ticks.size(); i++) {
      svg.line("light", wanted.get(i), base, places.get(i), base + 3);
      String look = ticks.get(i).isRound() ? "number bold end" : "number end";
      svg.text(look, places.get(i) + 0.9, base + 3.6, 90, ticks.get(i).label());
    }
    return places.isEmpty() ? left : places.get(places.size() - 1);
  }
}

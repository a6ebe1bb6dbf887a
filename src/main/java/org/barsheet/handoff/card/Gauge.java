package org.barsheet.handoff.card;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.PhotographMeasures;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.text.Svg;

/**
 * The paper gauges of a movement at true size: a protractor for a flap, strips for heights, thread
 * and ways. They are drawn from the very numbers on the shooting card.
 */
public final class Gauge {

  private static final double MARGIN = 14;
  private static final double HEADING = 36;
  private static final double GAP = 3;
  private static final double CHECK_BAR = 100;

  private final Movement movement;
  private final Opening opening;
  private final String film;
  private final double width;
  private final double height;
  private final List<Svg> pages = new ArrayList<>();
  private double y;

  private Gauge(Movement movement, Opening opening, String film, Film.Paper paper) {
    this.movement = movement;
    this.opening = opening;
    this.film = film;
    this.width = paper.width();
    this.height = paper.height();
  }

  /**
   * Pages of gauges, one drawing a page; none where nothing can be set by one.
   *
   * @param opening the one the movement is measured by
   */
  public static List<String> pages(
      Movement movement, Opening opening, String film, Film.Paper paper) {
    return new Gauge(movement, opening, film, paper).drawn();
  }

  private List<String> drawn() {
    List<Tick> angles =
        movement.measure().unit().equals("deg") ? rising(m -> Optional.of(m.set())) : List.of();
    if (angles.size() > 1 && angles.get(angles.size() - 1).at().doubleValue() <= 180) {
      Protractor protractor = new Protractor(angles, ProtractorUse.of(movement, opening));
      Svg svg = room(protractor.height());
      protractor.draw(svg, MARGIN, y);
      y += protractor.height() + GAP;
    }
    strips().forEach(this::draw);
    return pages.stream().map(Svg::toString).toList();
  }

  private List<Strip> strips() {
    List<Strip> strips = new ArrayList<>();
    if (movement.measure() instanceof Measure.Turn) {
      add(strips, "height", "Height of the free edge", "on the table", PhotographMeasures::height);
      add(
          strips,
          "thread",
          "Thread pulled in",
          "at the guide when closed",
          PhotographMeasures::pull);
    } else if (movement.measure().unit().equals("mm")) {
      add(strips, "way", way(), "at the edge when closed", measures -> Optional.of(measures.set()));
    }
    return strips;
  }

  private String way() {
    return movement.measure() instanceof Measure.Lift
        ? "Height above the table"
        : movement.measure() instanceof Measure.Widening ? "Width of the hole" : "Way";
  }

  private void add(
      List<Strip> strips,
      String measure,
      String title,
      String zero,
      Function<PhotographMeasures, Optional<BigDecimal>> of) {
    List<Tick> ticks = rising(of);
    if (ticks.size() > 1) {
      strips.add(new Strip(measure, title, zero, ticks));
    }
  }

  /**
   * The marks as long as they rise: a flap past upright comes down again. Free values that go to
   * and fro have none.
   */
  private List<Tick> rising(Function<PhotographMeasures, Optional<BigDecimal>> measure) {
    List<Tick> rising = new ArrayList<>();
    for (Tick tick : Tick.of(movement, measure)) {
      if (!rising.isEmpty() && tick.at().compareTo(rising.get(rising.size() - 1).at()) < 0) {
        return movement.measure() instanceof Measure.Listed ? List.of() : rising;
      }
      rising.add(tick);
    }
    return rising;
  }

  private void draw(Strip strip) {
    for (int part = 0; part < strip.parts(); part++) {
      Svg svg = room(strip.height());
      strip.draw(svg, part, MARGIN, y);
      y += strip.height() + GAP;
    }
  }

  /** The page that has room for so many millimeters more. */
  private Svg room(double millimeters) {
    if (pages.isEmpty() || y + millimeters > height - MARGIN / 2) {
      pages.add(heading(new Svg("Gauge of " + movement.name(), width, height)));
      y = MARGIN + HEADING;
    }
    return pages.get(pages.size() - 1);
  }

  private Svg heading(Svg svg) {
    svg.text("title", MARGIN, MARGIN + 4, "Gauge · " + movement.name());
    svg.text("", MARGIN, MARGIN + 9.5, film);
    svg.text(
        "",
        MARGIN,
        MARGIN + 14.5,
        "Numbers are photographs. Each mark is the number on the shooting card. Marks too close to"
            + " tell apart are on steps.");
    svg.text(
        "", MARGIN, MARGIN + 18.6, "Cut along the dashes, away from your hand; cap the blade.");
    double bar = MARGIN + 24;
    svg.line("heavy check", Svg.data("mm", "100"), MARGIN, bar, MARGIN + CHECK_BAR, bar);
    svg.line("heavy", MARGIN, bar - 2, MARGIN, bar + 2);
    svg.line("heavy", MARGIN + CHECK_BAR, bar - 2, MARGIN + CHECK_BAR, bar + 2);
    svg.text("bold", MARGIN + CHECK_BAR + 4, bar - 0.4, "This bar is 100 mm long.");
    svg.text(
        "",
        MARGIN + CHECK_BAR + 4,
        bar + 3.6,
        "If not, print again at 100 %, not fitted to the page.");
    return svg;
  }
}

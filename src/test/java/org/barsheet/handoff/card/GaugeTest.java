package org.barsheet.handoff.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.exposure.PhotographMeasures;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Film;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Support;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Gauges read back from their drawings: a mark lies where the card says, to 0.01 mm. */
class GaugeTest {

  private static final double CLOSE = 0.01;

  private static final Support THREAD =
      new Support("thread", Optional.empty(), Optional.of(200.0), "thread from 200 mm above");

  private static Opening opening(Opening.Motion motion, double squares) {
    return new Opening(
        "lamp-1",
        new Rect(0, 0, squares, squares),
        "small-lamp",
        motion,
        List.of(THREAD),
        new Where("quay.yaml", "line 1"));
  }

  private static Movement movement(
      Opening.Motion motion, double squares, Slow slow, int photographs) {
    return movement(motion, squares, slow, photographs, Hand.DEFAULT);
  }

  private static Movement movement(
      Opening.Motion motion, double squares, Slow slow, int photographs, Hand hand) {
    Artwork artwork =
        new Artwork(
            10, 24, 13.5, List.of(), 0, List.of(new Artwork.Model("small-lamp", 4, "green", "")));
    return Movement.of(
        "small-lamp",
        opening(motion, squares),
        List.of("lamp-1"),
        artwork,
        hand,
        slow,
        EvenIn.ANGLE,
        photographs);
  }

  private static List<PrintedPage> drawn(Movement movement) {
    return drawn(movement, new Opening.Hinged(Side.LEFT, 90));
  }

  private static List<PrintedPage> drawn(Movement movement, Opening.Motion motion) {
    return Gauge.pages(movement, opening(motion, 1), "Lamplighters' Quay", Film.Paper.A4).stream()
        .map(PrintedPage::of)
        .toList();
  }

  private static List<Element> lines(List<PrintedPage> pages, String look) {
    List<Element> lines = new ArrayList<>();
    for (PrintedPage page : pages) {
      for (Element line : page.all("line")) {
        if (List.of(line.getAttribute("class").split(" ", -1)).contains(look)) {
          lines.add(line);
        }
      }
    }
    return lines;
  }

  /** Where the marks of a strip lie, in millimeters from its end, by photograph. */
  private static Map<Integer, Double> strip(List<PrintedPage> pages, String measure) {
    Map<Integer, Double> marks = new TreeMap<>();
    double left = PrintedPage.number(lines(pages, "check").get(0), "x1");
    for (Element tick : lines(pages, "tick")) {
      if (tick.getAttribute("data-measure").equals(measure)) {
        assertThat(PrintedPage.number(tick, "x1")).isEqualTo(PrintedPage.number(tick, "x2"));
        double from = PrintedPage.number(tick, "data-part-from");
        put(marks, tick, PrintedPage.number(tick, "x1") - left + from);
      }
    }
    return marks;
  }

  private static void put(Map<Integer, Double> marks, Element tick, double at) {
    String[] numbers = tick.getAttribute("data-photograph").split("-", -1);
    int last = Integer.parseInt(numbers[numbers.length - 1]);
    for (int number = Integer.parseInt(numbers[0]); number <= last; number++) {
      marks.put(number, at);
    }
  }

  /** Angles of the marks of a protractor, from the crossing of the lines they lie on. */
  private static Map<Integer, Double> protractor(List<PrintedPage> pages) {
    Map<Integer, Double> marks = new TreeMap<>();
    for (Element tick : lines(pages, "tick")) {
      if (tick.hasAttribute("data-degrees")) {
        double across = PrintedPage.number(tick, "x2") - PrintedPage.number(tick, "x1");
        double up = PrintedPage.number(tick, "y1") - PrintedPage.number(tick, "y2");
        put(marks, tick, Math.toDegrees(Math.atan2(up, across)));
      }
    }
    return marks;
  }

  private static void agrees(
      Movement movement,
      Map<Integer, Double> marks,
      Function<PhotographMeasures, Optional<BigDecimal>> measure,
      double close) {
    BigDecimal before = BigDecimal.ZERO;
    for (MovedPhotograph photograph : movement.photographs()) {
      BigDecimal onCard = measure.apply(photograph.measures()).orElseThrow();
      if (onCard.compareTo(before) < 0) {
        break;
      }
      assertThat(marks.get(photograph.photograph().number()))
          .as(photograph.photograph().name())
          .isCloseTo(onCard.doubleValue(), within(close));
      before = onCard;
    }
  }

  @Test
  void a_drawing_is_as_large_in_millimeters_as_in_its_own_units() {
    Element svg =
        drawn(movement(new Opening.Hinged(Side.LEFT, 90), 1.5, Slow.END, 30)).get(0).root();
    assertThat(svg.getAttribute("width")).isEqualTo("210mm");
    assertThat(svg.getAttribute("height")).isEqualTo("297mm");
    assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 210 297");
  }

  @Test
  void every_page_has_a_bar_of_100_mm_to_check_the_print() {
    Movement large = movement(new Opening.Hinged(Side.LEFT, 90), 14, Slow.NONE, 40);
    List<PrintedPage> pages = drawn(large);
    assertThat(pages).hasSizeGreaterThan(1);
    for (PrintedPage page : pages) {
      Element bar = lines(List.of(page), "check").get(0);
      assertThat(PrintedPage.number(bar, "x2") - PrintedPage.number(bar, "x1")).isEqualTo(100);
    }
  }

  /** Half a degree is 0.7 mm on the protractor's rim of 80 mm, so 0.01 mm is 0.007 degrees. */
  @Test
  void a_flap_has_a_protractor_and_strips_for_height_and_thread() {
    Movement flap = movement(new Opening.Hinged(Side.LEFT, 90), 1.5, Slow.END, 30);
    List<PrintedPage> pages = drawn(flap);
    agrees(flap, protractor(pages), measures -> Optional.of(measures.set()), 0.02);
    agrees(flap, strip(pages, "height"), PhotographMeasures::height, CLOSE);
    agrees(flap, strip(pages, "thread"), PhotographMeasures::pull, CLOSE);
  }

  /** The rim of a tick is where the hand reads it. */
  @Test
  void the_rim_of_the_protractor_is_a_circle_about_the_hinge() {
    Movement flap = movement(new Opening.Hinged(Side.LEFT, 90), 1.5, Slow.NONE, 18);
    List<Element> ticks = lines(drawn(flap), "tick").subList(0, 19);
    double x = PrintedPage.number(ticks.get(18), "x2");
    double y = PrintedPage.number(ticks.get(0), "y2");
    for (int photograph = 0; photograph <= 18; photograph++) {
      double angle = Math.toRadians(5.0 * photograph);
      Element tick = ticks.get(photograph);
      assertThat(PrintedPage.number(tick, "x2")).isCloseTo(x + 80 * Math.cos(angle), within(CLOSE));
      assertThat(PrintedPage.number(tick, "y2")).isCloseTo(y - 80 * Math.sin(angle), within(CLOSE));
    }
  }

  /** Where the rays of a protractor come from: the hinge is where its base has its long mark. */
  private static double fromHinge(Element ray, Element zero) {
    double hinge = PrintedPage.number(zero, "x2") - 80;
    double across = PrintedPage.number(ray, "x1") - hinge;
    double up = PrintedPage.number(zero, "y2") - PrintedPage.number(ray, "y1");
    return Math.hypot(across, up);
  }

  /** A hatch of 17.8 mm, as in the demo: a rim of 80 mm alone is out of its reach. */
  @Test
  void every_ray_of_a_small_flap_begins_inside_its_reach() {
    Movement hatch = movement(new Opening.Hinged(Side.BOTTOM, 60), 0.445, Slow.NONE, 16);
    List<PrintedPage> pages = drawn(hatch, new Opening.Hinged(Side.BOTTOM, 60));
    Element zero = lines(pages, "tick").get(0);
    assertThat(lines(pages, "ray"))
        .hasSize(17)
        .allSatisfy(ray -> assertThat(fromHinge(ray, zero)).isLessThan(17.8 - 1));
    assertThat(pages.get(0).all("rect"))
        .noneMatch(rect -> rect.getAttribute("class").contains("pointer"));
  }

  @Test
  void a_flap_too_small_for_rays_close_together_gets_a_pointer_to_the_rim() {
    Movement small = movement(new Opening.Hinged(Side.LEFT, 60), 0.445, Slow.NONE, 60);
    assertThat(drawn(small).get(0).all("rect"))
        .filteredOn(rect -> rect.getAttribute("class").contains("pointer"))
        .singleElement()
        .satisfies(
            pointer -> assertThat(PrintedPage.number(pointer, "width")).isGreaterThan(80 + 5));
  }

  /** From its lower end, a flap hinged at the right goes up to the left. */
  @Test
  void a_flap_hinged_at_the_right_has_its_protractor_mirrored() {
    Movement flap = movement(new Opening.Hinged(Side.RIGHT, 90), 1.5, Slow.END, 30);
    List<PrintedPage> mirrored = drawn(flap, new Opening.Hinged(Side.RIGHT, 90));
    Map<Integer, Double> plain = protractor(drawn(flap));
    assertThat(protractor(mirrored))
        .allSatisfy((number, at) -> assertThat(180 - at).isCloseTo(plain.get(number), within(0.1)));
    assertThat(strip(mirrored, "height")).isEqualTo(strip(drawn(flap), "height"));
  }

  @Test
  void no_two_marks_are_nearer_than_half_a_millimeter() {
    Hand fine = new Hand(0.1, 0.1, 1, Optional.empty());
    Random random = new Random(11);
    for (int trial = 0; trial < 24; trial++) {
      Hand hand = trial % 2 == 0 ? Hand.DEFAULT : fine;
      Opening.Motion motion =
          trial % 4 < 2
              ? new Opening.Hinged(Side.LEFT, 20 + random.nextInt(150))
              : new Opening.Slides(Side.LEFT, 5 + random.nextInt(200));
      Slow slow = List.of(Slow.NONE, Slow.START, Slow.END, Slow.BOTH).get(random.nextInt(4));
      Movement movement =
          movement(motion, 0.3 + 3 * random.nextDouble(), slow, 1 + random.nextInt(120), hand);
      for (PrintedPage page : drawn(movement)) {
        apart(trial, lines(List.of(page), "tick"));
        apart(trial, lines(List.of(page), "ray"));
      }
    }
  }

  /** Straight marks that do not cross are nearest at an end of one of them. */
  private static void apart(int trial, List<Element> marks) {
    for (int i = 0; i < marks.size(); i++) {
      for (int j = 0; j < i; j++) {
        Line2D one = segment(marks.get(i));
        Line2D other = segment(marks.get(j));
        double near =
            Math.min(
                Math.min(other.ptSegDist(one.getP1()), other.ptSegDist(one.getP2())),
                Math.min(one.ptSegDist(other.getP1()), one.ptSegDist(other.getP2())));
        assertThat(near)
            .as("trial %d, %s", trial, marks.get(i).getAttribute("data-photograph"))
            .isGreaterThan(0.5 - 0.002);
      }
    }
  }

  private static Line2D segment(Element line) {
    return new Line2D.Double(
        PrintedPage.number(line, "x1"),
        PrintedPage.number(line, "y1"),
        PrintedPage.number(line, "x2"),
        PrintedPage.number(line, "y2"));
  }

  @Test
  void a_strip_longer_than_the_page_comes_in_parts_that_join() {
    Movement shutter = movement(new Opening.Slides(Side.LEFT, 500), 12, Slow.BOTH, 50);
    List<PrintedPage> pages = drawn(shutter);
    agrees(shutter, strip(pages, "way"), measures -> Optional.of(measures.set()), CLOSE);
    assertThat(lines(pages, "tick"))
        .extracting(tick -> tick.getAttribute("data-part-from"))
        .contains("0", "180", "360")
        .doesNotContain("540");
  }

  @Test
  void a_lamp_has_no_gauge_and_neither_has_what_goes_to_and_fro() {
    assertThat(drawn(movement(new Opening.Brightens(80), 1, Slow.NONE, 10))).isEmpty();
    Opening.Motion swing = new Opening.Values(List.of(2.0, 5.0, 3.0), "mm");
    assertThat(drawn(movement(swing, 1, Slow.NONE, 3))).isEmpty();
    Opening.Motion rise = new Opening.Values(List.of(2.0, 5.0, 7.25), "mm");
    assertThat(strip(drawn(movement(rise, 1, Slow.NONE, 3)), "way")).containsKeys(0, 1, 2, 3);
  }

  @Test
  void nothing_is_drawn_off_the_page_whatever_the_movement() {
    Random random = new Random(7);
    for (int trial = 0; trial < 60; trial++) {
      double whole = 1 + random.nextInt(180);
      Opening.Motion motion =
          random.nextBoolean()
              ? new Opening.Hinged(Side.TOP, whole)
              : new Opening.Slides(Side.TOP, whole);
      Slow slow = List.of(Slow.NONE, Slow.START, Slow.END, Slow.BOTH).get(random.nextInt(4));
      Movement movement =
          movement(motion, 0.3 + 3 * random.nextDouble(), slow, 1 + random.nextInt(200));
      for (PrintedPage page : drawn(movement)) {
        for (Element text : page.all("text")) {
          assertThat(PrintedPage.number(text, "x")).as("trial %d", trial).isBetween(8.0, 204.0);
          assertThat(PrintedPage.number(text, "y")).as("trial %d", trial).isBetween(8.0, 292.0);
        }
      }
      if (motion instanceof Opening.Hinged) {
        agrees(movement, strip(drawn(movement), "height"), PhotographMeasures::height, CLOSE);
      }
    }
  }
}

package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Opening.Values;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

/**
 * How far movements go. An opening of 2 by 4 squares of 25.4 mm (an inch, 25.4 mm exactly), on a
 * model three times as large: 152.4 by 304.8 mm. All else is plain geometry.
 */
class MeasureTest {

  private static final Offset<Double> EXACT = within(1e-9);
  private static final double WIDE = 152.4;
  private static final double HIGH = 304.8;

  private static Measure of(Opening.Motion motion) {
    return of(motion, "lamp");
  }

  private static Measure of(Opening.Motion motion, String model) {
    Artwork artwork =
        new Artwork(25.4, 24, 13.5, List.of(), 0, List.of(new Artwork.Model("lamp", 3, "", "")));
    Where where = new Where("quay.yaml", "openings");
    return Measure.of(
        new Opening("lamp-1", new Rect(3, 7, 2, 4), model, motion, List.of(), where), artwork);
  }

  @Test
  void a_flap_is_as_long_as_the_opening_is_away_from_its_hinge() {
    assertThat(of(new Hinged(Side.LEFT, 90)).height(90).orElseThrow()).isCloseTo(WIDE, EXACT);
    assertThat(of(new Hinged(Side.RIGHT, 90)).height(90).orElseThrow()).isCloseTo(WIDE, EXACT);
    assertThat(of(new Hinged(Side.TOP, 90)).height(90).orElseThrow()).isCloseTo(HIGH, EXACT);
    assertThat(of(new Hinged(Side.BOTTOM, 90)).height(90).orElseThrow()).isCloseTo(HIGH, EXACT);
  }

  @Test
  void an_opening_without_a_model_is_as_large_as_the_artwork() {
    assertThat(of(new Slides(Side.LEFT, 0), "none").whole()).isCloseTo(WIDE / 3, EXACT);
  }

  /** Half of the hole is open at 60 degrees: 1 − cos 60° = ½. */
  @Test
  void a_flap_turns_by_equal_angles_or_uncovers_equal_shares() {
    Measure flap = of(new Hinged(Side.LEFT, 90));
    assertThat(flap.amount(1, 0.5, EvenIn.ANGLE)).isCloseTo(45, EXACT);
    double even = flap.amount(1, 0.5, EvenIn.OPENING);
    assertThat(even).isCloseTo(60, EXACT);
    assertThat(flap.uncovered(even)).isCloseTo(0.5, EXACT);
    assertThat(flap.uncovered(120)).isEqualTo(1);
    assertThat(flap.edgeStep(30, 90).orElseThrow()).isCloseTo(WIDE, EXACT);
  }

  @Test
  void a_shutter_slides_over_its_hole_unless_the_plan_says_how_far() {
    assertThat(of(new Slides(Side.LEFT, 0)).whole()).isCloseTo(WIDE, EXACT);
    assertThat(of(new Slides(Side.TOP, 0)).whole()).isCloseTo(HIGH, EXACT);
    Measure half = of(new Slides(Side.RIGHT, WIDE / 2));
    assertThat(half.amount(1, 0.5, EvenIn.ANGLE)).isCloseTo(WIDE / 4, EXACT);
    assertThat(half.uncovered(half.whole())).isCloseTo(0.5, EXACT);
    assertThat(half.uncovered(2 * WIDE)).isEqualTo(1);
    assertThat(half.edgeStep(10, 4)).hasValue(6);
    assertThat(half.height(10)).isEmpty();
    assertThat(half.unit()).isEqualTo("mm");
  }

  @Test
  void a_piece_lifted_covers_its_hole_until_it_is_taken_away() {
    Measure piece = of(new LiftsOff(40));
    assertThat(piece.amount(1, 0.25, EvenIn.ANGLE)).isEqualTo(10);
    assertThat(piece.height(10)).hasValue(10);
    assertThat(piece.edgeStep(10, 4)).hasValue(6);
    assertThat(piece.uncovered(39.9)).isZero();
    assertThat(piece.uncovered(40)).isEqualTo(1);
  }

  @Test
  void a_lamp_shows_the_share_of_its_full_light() {
    Measure lamp = of(new Brightens(80));
    assertThat(lamp.unit()).isEqualTo("%");
    assertThat(lamp.amount(1, 0.5, EvenIn.ANGLE)).isEqualTo(40);
    assertThat(lamp.uncovered(40)).isEqualTo(0.4);
    assertThat(lamp.edgeStep(0, 40)).isEmpty();
    assertThat(lamp.height(40)).isEmpty();
  }

  /** A circle's area grows with the square of its width: half the area is 1/√2 of the width. */
  @Test
  void a_hole_that_grows_does_so_by_its_width_or_by_its_area() {
    Measure iris = of(new Iris(50));
    assertThat(iris.whole()).isCloseTo(WIDE / 2, EXACT);
    assertThat(iris.amount(1, 0.5, EvenIn.ANGLE)).isCloseTo(WIDE / 4, EXACT);
    assertThat(iris.amount(1, 0.5, EvenIn.OPENING)).isCloseTo(WIDE / 2 / Math.sqrt(2), EXACT);
    assertThat(iris.uncovered(WIDE / 2)).isCloseTo(0.25, EXACT);
    assertThat(iris.uncovered(2 * WIDE)).isEqualTo(1);
    assertThat(iris.edgeStep(10, 4)).hasValue(3);
    assertThat(iris.height(10)).isEmpty();
  }

  @Test
  void listed_values_stand_for_photographs_1_2_3_and_the_last_for_those_past_it() {
    Measure listed = of(new Values(List.of(2.0, -8.0, 4.0), "mm"));
    assertThat(listed.amount(0, 0, EvenIn.ANGLE)).isZero();
    assertThat(listed.amount(1, 0.1, EvenIn.ANGLE)).isEqualTo(2);
    assertThat(listed.amount(3, 1, EvenIn.ANGLE)).isEqualTo(4);
    assertThat(listed.amount(4, 1, EvenIn.ANGLE)).isEqualTo(4);
    assertThat(listed.whole()).isEqualTo(4);
    assertThat(listed.uncovered(-4)).isEqualTo(0.5);
    assertThat(listed.edgeStep(2, -8)).hasValue(10);
    assertThat(listed.height(2)).isEmpty();
  }

  @Test
  void only_listed_millimeters_are_a_way_of_the_edge() {
    Measure listed = of(new Values(List.of(0.0), "turns"));
    assertThat(listed.unit()).isEqualTo("turns");
    assertThat(listed.edgeStep(0, 1)).isEmpty();
    assertThat(listed.uncovered(0)).isZero();
  }
}

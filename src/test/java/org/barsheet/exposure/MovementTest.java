package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Support;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Movements photograph by photograph. The model is four times as large as the artwork, whose
 * squares are 10 mm: an opening of 1.5 by 2 squares is 60 mm wide and 80 mm high under the camera.
 */
class MovementTest {

  private static final Artwork ARTWORK =
      new Artwork(
          10, 24, 13.5, List.of(), 0, List.of(new Artwork.Model("small-lamp", 4, "green", "")));
  private static final Support PUTTY =
      new Support("putty", Optional.of(25.0), Optional.empty(), "putty up to 25 mm");
  private static final Support THREAD =
      new Support("thread", Optional.empty(), Optional.of(200.0), "thread from 200 mm above");

  private static Movement movement(
      Opening.Motion motion, Slow slow, EvenIn evenIn, int photographs, Support... heldBy) {
    Rect rect = new Rect(3, 7, 1.5, 2);
    Where where = new Where("quay.yaml", "line 1");
    Opening opening = new Opening("lamp-1", rect, "small-lamp", motion, List.of(heldBy), where);
    return Movement.of(
        "small-lamp", opening, List.of("lamp-1"), ARTWORK, Hand.DEFAULT, slow, evenIn, photographs);
  }

  private static Movement flap(Slow slow, int photographs) {
    Opening.Motion motion = new Opening.Hinged(Side.LEFT, 90);
    return movement(motion, slow, EvenIn.ANGLE, photographs, PUTTY, THREAD);
  }

  private static PhotographMeasures at(Movement movement, int photograph) {
    return movement.photographs().get(photograph).measures();
  }

  /**
   * 30 photographs to 90 degrees, slow at the end: photograph 1 stands at 90 · (1 − (29/30)²) =
   * 5.9.
   */
  @Test
  void what_the_hand_sets_is_the_nearest_half_degree() {
    Movement flap = flap(Slow.END, 30);
    assertThat(at(flap, 1).amount()).isCloseTo(5.9, within(1e-9));
    assertThat(at(flap, 1).set()).isEqualByComparingTo("6");
    assertThat(at(flap, 2).set()).isEqualByComparingTo("11.5");
    assertThat(at(flap, 2).step()).isEqualByComparingTo("5.5");
    assertThat(at(flap, 30).set()).isEqualByComparingTo("90");
  }

  /** 60 · sin 45° = 42.426; √(60² + 200²) − √(60² + 200² − 2·60·200·sin 45°) = 45.621. */
  @Test
  void heights_and_threads_follow_from_what_is_set_in_tenths_of_a_millimeter() {
    Movement flap = flap(Slow.NONE, 30);
    assertThat(at(flap, 15).height()).contains(new BigDecimal("42.4"));
    assertThat(at(flap, 15).pull()).contains(new BigDecimal("45.6"));
    assertThat(at(flap, 1).edgeStep()).contains(new BigDecimal("3.1"));
    assertThat(at(flap, 20).uncovered()).isCloseTo(0.5, within(1e-9));
  }

  /** 60 · sin 24° = 24.40 and 60 · sin 27° = 27.24. */
  @Test
  void putty_gives_way_to_thread_at_25_mm() {
    Movement flap = flap(Slow.NONE, 30);
    assertThat(at(flap, 0).heldBy()).isEmpty();
    assertThat(at(flap, 8).heldBy()).contains(PUTTY);
    assertThat(at(flap, 9).heldBy()).contains(THREAD);
    assertThat(at(flap, 30).heldBy()).contains(THREAD);
  }

  @Test
  void a_support_that_has_changed_does_not_change_back_past_upright() {
    Opening.Motion motion = new Opening.Hinged(Side.LEFT, 180);
    Movement flap = movement(motion, Slow.NONE, EvenIn.ANGLE, 36, PUTTY, THREAD);
    assertThat(at(flap, 35).height()).contains(new BigDecimal("5.2"));
    assertThat(at(flap, 35).heldBy()).contains(THREAD);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void the_free_edge_of_a_flap_lies_across_from_its_hinge(Side hinge) {
    Movement flap = movement(new Opening.Hinged(hinge, 90), Slow.NONE, EvenIn.ANGLE, 2);
    boolean across = hinge == Side.LEFT || hinge == Side.RIGHT;
    assertThat(at(flap, 2).height()).contains(new BigDecimal(across ? "60.0" : "80.0"));
  }

  @Test
  void a_flap_even_in_opening_uncovers_equal_shares() {
    Opening.Motion motion = new Opening.Hinged(Side.LEFT, 90);
    Movement flap = movement(motion, Slow.NONE, EvenIn.OPENING, 30);
    assertThat(at(flap, 1).amount()).isCloseTo(14.835, within(0.0005));
    assertThat(at(flap, 15).amount()).isCloseTo(60, within(1e-9));
    assertThat(at(flap, 15).uncovered()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void a_shutter_slides_by_the_size_of_its_hole_unless_told_otherwise() {
    Movement all = movement(new Opening.Slides(Side.TOP, 0), Slow.NONE, EvenIn.ANGLE, 4);
    assertThat(at(all, 1).set()).isEqualByComparingTo("20");
    assertThat(at(all, 1).edgeStep()).contains(new BigDecimal("20.0"));
    assertThat(at(all, 1).uncovered()).isCloseTo(0.25, within(1e-9));
    assertThat(at(all, 1).height()).isEmpty();
    Movement half = movement(new Opening.Slides(Side.RIGHT, 30), Slow.NONE, EvenIn.ANGLE, 4);
    assertThat(at(half, 4).uncovered()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void a_piece_lifted_straight_up_covers_its_hole_until_it_is_taken_away() {
    Movement lid = movement(new Opening.LiftsOff(30), Slow.NONE, EvenIn.ANGLE, 3);
    assertThat(at(lid, 2).height()).contains(new BigDecimal("20.0"));
    assertThat(at(lid, 2).uncovered()).isZero();
    assertThat(at(lid, 3).uncovered()).isEqualTo(1);
  }

  @Test
  void a_lamp_brightens_by_whole_percent() {
    Movement lamp = movement(new Opening.Brightens(80), Slow.NONE, EvenIn.ANGLE, 3);
    assertThat(lamp.photographs())
        .extracting(photograph -> photograph.measures().set().intValueExact())
        .containsExactly(0, 27, 53, 80);
    assertThat(at(lamp, 3).uncovered()).isCloseTo(0.8, within(1e-9));
    assertThat(at(lamp, 3).edgeStep()).isEmpty();
  }

  /**
   * A circle's area grows with the square of its width: half the width is a quarter of the hole.
   */
  @Test
  void an_iris_even_in_opening_grows_by_equal_areas() {
    Movement even = movement(new Opening.Iris(100), Slow.NONE, EvenIn.OPENING, 4);
    assertThat(at(even, 1).amount()).isCloseTo(30, within(1e-9));
    assertThat(at(even, 1).uncovered()).isCloseTo(0.25, within(1e-9));
    assertThat(at(even, 1).edgeStep()).contains(new BigDecimal("15.0"));
    Movement width = movement(new Opening.Iris(100), Slow.NONE, EvenIn.ANGLE, 4);
    assertThat(at(width, 1).amount()).isCloseTo(15, within(1e-9));
  }

  @Test
  void values_of_their_own_are_set_as_they_are() {
    Opening.Motion motion = new Opening.Values(List.of(2.25, 5.0, 3.0), "mm");
    Movement tide = movement(motion, Slow.NONE, EvenIn.ANGLE, 3);
    assertThat(at(tide, 1).set()).isEqualByComparingTo("2.25");
    assertThat(at(tide, 3).step()).isEqualByComparingTo("-2");
    assertThat(at(tide, 2).uncovered()).isEqualTo(1);
  }

  /** Steps add up to the movement, none goes backwards, and none is off by more than a unit. */
  @Test
  void hundreds_of_movements_add_up() {
    Random random = new Random(20_241_125);
    for (int trial = 0; trial < 400; trial++) {
      Slow slow = any(random, Slow.values());
      EvenIn evenIn = any(random, EvenIn.values());
      Opening.Motion motion = motion(random);
      Movement movement = movement(motion, slow, evenIn, 1 + random.nextInt(80), PUTTY, THREAD);
      check("trial " + trial + ": " + motion + " " + slow + " " + evenIn, movement);
    }
  }

  private static <T> T any(Random random, T[] things) {
    return things[random.nextInt(things.length)];
  }

  private static Opening.Motion motion(Random random) {
    double whole = (1 + random.nextInt(720)) / 4.0;
    return switch (random.nextInt(5)) {
      case 0 -> new Opening.Hinged(any(random, Side.values()), whole);
      case 1 -> new Opening.Slides(any(random, Side.values()), whole);
      case 2 -> new Opening.LiftsOff(whole);
      case 3 -> new Opening.Brightens(Math.min(100, whole));
      default -> new Opening.Iris(Math.min(100, whole));
    };
  }

  private static void check(String trial, Movement movement) {
    BigDecimal sum = BigDecimal.ZERO;
    double uncovered = 0;
    List<MovedPhotograph> wrong = new ArrayList<>();
    for (MovedPhotograph photograph : movement.photographs()) {
      PhotographMeasures measures = photograph.measures();
      sum = sum.add(measures.step());
      boolean good =
          measures.step().signum() >= 0
              && measures.uncovered() >= uncovered
              && measures.uncovered() <= 1
              && sum.compareTo(measures.set()) == 0
              && Math.abs(measures.set().doubleValue() - measures.amount()) < 1;
      uncovered = measures.uncovered();
      if (!good) {
        wrong.add(photograph);
      }
    }
    assertThat(wrong).as(trial).isEmpty();
    assertThat(sum.doubleValue()).as(trial).isCloseTo(movement.measure().whole(), within(0.05));
  }
}

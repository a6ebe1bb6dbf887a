package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

/** A flap of 60 mm that opens to 90 degrees; the figures are plain arithmetic, worked by hand. */
class LargestStepTest {

  private static final Artwork ARTWORK =
      new Artwork(10, 24, 13.5, List.of(), 0, List.of(new Artwork.Model("quay", 1, "", "")));

  private static LargestStep of(Hand hand, Slow slow, EvenIn evenIn, int photographs) {
    Opening opening =
        new Opening(
            "gate",
            new Rect(0, 0, 6, 2),
            "quay",
            new Opening.Hinged(Side.LEFT, 90),
            List.of(),
            new Where("quay.yaml", "line 1"));
    Movement movement =
        Movement.of("gate", opening, List.of("gate"), ARTWORK, hand, slow, evenIn, photographs);
    return LargestStep.of(movement, hand);
  }

  private static Hand limit(double millimeters) {
    return new Hand(0.5, 0.5, 1, Optional.of(millimeters));
  }

  /** 2 · 60 · sin 1.5° = 3.141 mm for each of 30 even photographs. */
  @Test
  void even_steps_are_all_the_largest_and_the_first_of_them_is_named() {
    LargestStep largest = of(limit(3.2), Slow.NONE, EvenIn.ANGLE, 30);
    assertThat(largest.photograph()).isEqualTo(1);
    assertThat(largest.step()).isCloseTo(3.141, within(0.0005));
    assertThat(largest.isWithin()).isTrue();
  }

  /** 2 · 60 · sin(Δ/2) ≤ 3 mm asks for Δ ≤ 2.865°: 32 photographs of 2.8125°, not 31 of 2.903°. */
  @Test
  void it_says_how_many_photographs_would_be_enough() {
    LargestStep largest = of(limit(3), Slow.NONE, EvenIn.ANGLE, 30);
    assertThat(largest.isWithin()).isFalse();
    assertThat(largest.enough()).hasValue(32);
    assertThat(of(limit(3), Slow.NONE, EvenIn.ANGLE, 31).isWithin()).isFalse();
    assertThat(of(limit(3), Slow.NONE, EvenIn.ANGLE, 32).isWithin()).isTrue();
  }

  @Test
  void a_movement_slow_at_its_start_has_its_largest_step_last() {
    assertThat(of(limit(3), Slow.START, EvenIn.ANGLE, 30).photograph()).isEqualTo(30);
  }

  /** Without a limit of the plan: an eighth of 90°; the first of 30 equal shares is 14.835°. */
  @Test
  void without_a_limit_a_step_may_go_an_eighth_of_the_way() {
    LargestStep largest = of(Hand.DEFAULT, Slow.NONE, EvenIn.OPENING, 30);
    assertThat(largest.step()).isCloseTo(14.835, within(0.0005));
    assertThat(largest.limit()).isEqualTo(11.25);
    assertThat(largest.enough()).hasValue(53);
    assertThat(of(Hand.DEFAULT, Slow.NONE, EvenIn.ANGLE, 8).isWithin()).isTrue();
    assertThat(of(Hand.DEFAULT, Slow.NONE, EvenIn.ANGLE, 7).isWithin()).isFalse();
  }

  @Test
  void a_limit_no_number_of_photographs_can_keep_is_said() {
    assertThat(of(limit(1e-6), Slow.NONE, EvenIn.ANGLE, 30).enough()).isEmpty();
  }
}

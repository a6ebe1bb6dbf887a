package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.timing.PictureRun;
import org.junit.jupiter.api.Test;

/** Amounts a hand sets; the checks are plain trigonometry and arithmetic, worked by hand. */
class MeasureTest {

  private static final Measure FLAP = new Measure.Turn(Side.LEFT, 90);

  @Test
  void a_flap_even_in_angle_turns_by_equal_angles() {
    assertThat(FLAP.amount(10, 10 / 30.0, EvenIn.ANGLE)).isCloseTo(30, within(1e-9));
  }

  /** 1 − cos θ: at 30° a flap uncovers 13.4 % of its hole, at 60° half of it. */
  @Test
  void a_flap_even_in_aperture_uncovers_equal_shares() {
    assertThat(FLAP.amount(1, 1 / 30.0, EvenIn.APERTURE)).isCloseTo(14.835, within(0.0005));
    assertThat(FLAP.amount(15, 0.5, EvenIn.APERTURE)).isCloseTo(60, within(1e-9));
    assertThat(FLAP.amount(30, 1, EvenIn.APERTURE)).isCloseTo(90, within(1e-9));
    assertThat(1 - Math.cos(Math.toRadians(30))).isCloseTo(0.134, within(0.0005));
  }

  @Test
  void an_iris_even_in_aperture_grows_by_equal_areas() {
    Measure iris = new Measure.Widening(100);
    assertThat(iris.amount(1, 0.25, EvenIn.APERTURE)).isCloseTo(50, within(1e-9));
    assertThat(iris.amount(1, 0.25, EvenIn.ANGLE)).isCloseTo(25, within(1e-9));
  }

  @Test
  void values_of_their_own_are_taken_picture_by_picture() {
    Measure listed = new Measure.Listed(List.of(2.0, 5.0, 9.0), "mm");
    assertThat(listed.amount(0, 0, EvenIn.ANGLE)).isZero();
    assertThat(listed.amount(2, 0.4, EvenIn.ANGLE)).isEqualTo(5);
  }

  /** Index round-half-up(k × 30 / 20), worked by hand. */
  @Test
  void twenty_pictures_out_of_thirty() {
    assertThat(IntStream.rangeClosed(1, 20).map(k -> PictureRun.picture(30, 20, k)))
        .containsExactly(2, 3, 5, 6, 8, 9, 11, 12, 14, 15, 17, 18, 20, 21, 23, 24, 26, 27, 29, 30);
  }
}

package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A flap of 60 mm. The figures are plain trigonometry (chord, sine, law of cosines), worked outside
 * the project with a pocket calculator's functions.
 */
class HingeGeometryTest {

  private static final HingeGeometry FLAP = new HingeGeometry(60);

  @ParameterizedTest
  @CsvSource({"3, 3.141", "45, 45.922", "90, 84.853"})
  void the_free_edge_steps_along_the_chord(double degrees, double millimeters) {
    assertThat(FLAP.edgeStep(0, degrees)).isCloseTo(millimeters, within(0.0005));
    assertThat(FLAP.edgeStep(90, 90 - degrees)).isCloseTo(millimeters, within(0.0005));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "30, 30", "45, 42.426", "90, 60", "150, 30"})
  void the_putty_gauge_is_as_high_as_the_sine(double degrees, double millimeters) {
    assertThat(FLAP.height(degrees)).isCloseTo(millimeters, within(0.0005));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "45, 45.621", "90, 68.806"})
  void a_thread_from_200_mm_above_the_hinge_is_pulled_in(double degrees, double millimeters) {
    assertThat(FLAP.pull(degrees, 200)).isCloseTo(millimeters, within(0.0005));
  }

  /** The thread's length by the law of cosines, with the angle between flap and upright. */
  @Test
  void the_thread_agrees_with_the_law_of_cosines() {
    for (int degrees = 0; degrees <= 180; degrees += 5) {
      double between = Math.toRadians(90 - degrees);
      double length = Math.sqrt(60.0 * 60 + 200.0 * 200 - 2 * 60 * 200 * Math.cos(between));
      double flat = Math.sqrt(60.0 * 60 + 200.0 * 200);
      assertThat(FLAP.pull(degrees, 200)).isCloseTo(flat - length, within(1e-9));
    }
  }

  @Test
  void a_thread_is_let_out_again_past_upright() {
    assertThat(FLAP.pull(120, 200)).isLessThan(FLAP.pull(90, 200));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "30, 0.134", "60, 0.5", "90, 1", "120, 1"})
  void seen_from_above_it_uncovers_one_less_the_cosine(double degrees, double share) {
    assertThat(HingeGeometry.uncovered(degrees)).isCloseTo(share, within(0.0005));
  }

  @Test
  void the_first_of_thirty_equal_shares_of_a_right_angle_is_nearly_fifteen_degrees() {
    assertThat(HingeGeometry.angleAtShare(1 / 30.0, 90)).isCloseTo(14.835, within(0.0005));
    assertThat(HingeGeometry.angleAtShare(0.5, 90)).isCloseTo(60, within(1e-9));
    assertThat(HingeGeometry.angleAtShare(1, 120)).isCloseTo(120, within(1e-9));
  }

  @Test
  void a_flap_has_a_length() {
    assertThatThrownBy(() -> new HingeGeometry(0)).isInstanceOf(IllegalArgumentException.class);
  }
}

package org.barsheet.pixels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RobustTest {

  @Test
  void one_wild_value_does_not_move_the_median() {
    assertThat(Robust.median(3, 1, 2, 1e9, 2)).isEqualTo(2);
    assertThat(Robust.median(1, 2, 3, 4)).isEqualTo(2.5);
  }

  /** Sen, Estimates of the regression coefficient based on Kendall's tau, 1968. */
  @Test
  void the_slope_is_the_median_of_all_slopes() {
    assertThat(Robust.slope(0, 2, 4, 6, 8)).isEqualTo(2);
    assertThat(Robust.slope(0, 2, 4, 99, 8, 10, 12)).isEqualTo(2);
    assertThat(Robust.slope(5)).isZero();
  }

  /** A stop is twice the light; sRGB's level 188 is half of white (IEC 61966-2-1). */
  @Test
  void levels_are_those_of_srgb() {
    assertThat(Reduced.level(0.5)).isCloseTo(187.5, within(0.1));
    assertThat(Reduced.linear(255)).isEqualTo(1);
    for (int level = 0; level < 256; level++) {
      assertThat(Reduced.level(Reduced.linear(level))).isCloseTo(level, within(0.02));
    }
  }
}

package org.barsheet.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SecondsTest {

  @ParameterizedTest
  @CsvSource({
    "2, 2",
    "2.5, 5/2",
    "-0.25, -1/4",
    "1001/24000, 1001/24000",
    "4/2, 2",
    ".5, 1/2",
    "3., 3",
    "0.1, 1/10"
  })
  void decimals_and_fractions_are_read_exactly(String text, String exact) {
    assertThat(Seconds.parse(text)).hasToString(exact);
    assertThat(Seconds.parse(exact)).isEqualTo(Seconds.parse(text));
  }

  @ParameterizedTest
  @CsvSource({"''", "1/0", "1e3", "abc", "1/-2", "NaN", "1 2", "-"})
  void anything_else_is_refused(String text) {
    assertThatThrownBy(() -> Seconds.parse(text)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void sums_do_not_drift() {
    Seconds tenth = Seconds.parse("0.1");
    Seconds sum = Seconds.ZERO;
    for (int i = 0; i < 1000; i++) {
      sum = sum.plus(tenth);
    }
    assertThat(sum).isEqualTo(Seconds.of(100));
  }

  @Test
  void decimals_for_people_round_ties_away_from_zero() {
    assertThat(Seconds.of(1, 8).toDecimal(2)).hasToString("0.13");
    assertThat(Seconds.of(-1, 8).toDecimal(2)).hasToString("-0.13");
  }

  @Test
  void moments_before_the_start_are_in_order_too() {
    assertThat(Seconds.of(-2)).isLessThan(Seconds.of(-1));
    assertThat(Seconds.of(-1, 3)).isGreaterThan(Seconds.of(-1, 2)).isLessThan(Seconds.ZERO);
    assertThat(Seconds.of(-1)).isLessThan(Seconds.of(1));
    assertThat(Seconds.of(-1)).isEqualByComparingTo(Seconds.of(-2, 2));
  }
}

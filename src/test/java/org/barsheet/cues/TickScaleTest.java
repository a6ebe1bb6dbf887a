package org.barsheet.cues;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bar lines on ticks 100, 200, 500 and 900: a bar of 100 ticks, one of 300 and one of 400. */
class TickScaleTest {

  private static final TickScale SCALE = new TickScale(new long[] {100, 200, 500, 900});

  @ParameterizedTest
  @CsvSource({
    "100, 0, 1",
    "150, 1, 2",
    "200, 1, 1",
    "300, 4, 3",
    "499, 599, 300",
    "500, 2, 1",
    "700, 5, 2",
    "900, 3, 1"
  })
  void between_two_lines_it_is_in_proportion(long tick, int position, int outOf) {
    assertSame(tick, position, outOf);
  }

  @ParameterizedTest
  @CsvSource({"99, -1, 100", "50, -1, 2", "0, -1, 1", "-100, -2, 1"})
  void before_the_first_line_it_runs_on_at_the_length_of_the_first_bar(
      long tick, int position, int outOf) {
    assertSame(tick, position, outOf);
  }

  @ParameterizedTest
  @CsvSource({"1100, 7, 2", "1300, 4, 1", "1700, 5, 1"})
  void after_the_last_line_it_runs_on_at_the_length_of_the_last_bar(
      long tick, int position, int outOf) {
    assertSame(tick, position, outOf);
  }

  @Test
  void parts_of_a_tick_count() {
    assertSame(BigFraction.of(401, 2), BigFraction.of(601, 600));
    assertSame(BigFraction.of(399, 2), BigFraction.of(199, 200));
    assertSame(BigFraction.of(-1, 2), BigFraction.of(-201, 200));
  }

  private static void assertSame(long tick, int position, int outOf) {
    assertSame(BigFraction.of(tick), BigFraction.of(position, outOf));
  }

  private static void assertSame(BigFraction tick, BigFraction position) {
    assertThat(SCALE.position(tick)).isEqualTo(position);
    assertThat(SCALE.tickAt(position)).isEqualTo(tick);
  }

  @Test
  void one_line_alone_measures_nothing() {
    assertThatIllegalArgumentException().isThrownBy(() -> new TickScale(new long[] {100}));
    assertThat(new TickScale(new long[] {0, 5}).tickAt(BigFraction.of(2)))
        .isEqualTo(BigFraction.of(10));
  }
}

package org.barsheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.SyntaxException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTest {

  @Test
  void a_length_is_an_amount_and_a_unit() {
    assertThat(Length.parse("4 bars")).isEqualTo(of(Length.Unit.BARS, 4, 1));
    assertThat(Length.parse("1 bar")).isEqualTo(of(Length.Unit.BARS, 1, 1));
    assertThat(Length.parse("3 beats")).isEqualTo(of(Length.Unit.BEATS, 3, 1));
    assertThat(Length.parse("2.5 s")).isEqualTo(of(Length.Unit.SECONDS, 5, 2));
    assertThat(Length.parse("60f")).isEqualTo(of(Length.Unit.FRAMES, 60, 1));
  }

  @Test
  void two_amounts_are_a_least_and_a_most() {
    Length length = Length.parse("2..4 bars");
    assertThat(length)
        .isEqualTo(new Length(Length.Unit.BARS, BigFraction.of(2), BigFraction.of(4)));
    assertThat(length.isRange()).isTrue();
    assertThat(Length.parse("1.5 .. 2 s"))
        .isEqualTo(new Length(Length.Unit.SECONDS, BigFraction.of(3, 2), BigFraction.of(2)));
  }

  @Test
  void only_a_least_or_only_a_most_is_a_range_as_well() {
    assertThat(Length.parse("at least 8 bars"))
        .isEqualTo(new Length(Length.Unit.BARS, BigFraction.of(8), Length.NO_MOST));
    assertThat(Length.parse("At most 3 s"))
        .isEqualTo(new Length(Length.Unit.SECONDS, BigFraction.ZERO, BigFraction.of(3)));
    assertThat(Length.parse("at least 1 bar")).hasToString("at least 1 bar");
    assertThat(Length.parse("0..2 beats")).hasToString("at most 2 beats");
  }

  private static Length of(Length.Unit unit, int numerator, int denominator) {
    return Length.of(unit, BigFraction.of(numerator, denominator));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "\"\"|0|a number is missing here",
        "bars|0|a number is missing here",
        "4|1|this length has no unit",
        "4 lines|2|no unit is called 'lines'",
        "2.5 seconds|4|no unit is called 'seconds'",
        "2,5 s|1|use a decimal point, not a comma",
        "-2 bars|0|a number is missing here",
        "4..2 bars|3|2 is less than 4",
        "2..bars|3|the larger number is missing here",
        "2.5 f|1|frames are whole numbers",
        "2..4.5 f|4|frames are whole numbers",
        "at most 2.5 f|9|frames are whole numbers",
        "at 4 bars|3|least or most is missing here",
        "at least bars|9|a number is missing here",
        "4 bars long|7|'long' isn't understood here",
        "1.2345678 s|8|more than six decimals",
        "99999999 f|0|99999999 is too large a number",
      })
  void what_is_wrong_is_said_at_the_character(String text, int offset, String sentence) {
    SyntaxException wrong = catchThrowableOfType(SyntaxException.class, () -> Length.parse(text));
    assertThat(wrong).isNotNull();
    assertThat(wrong.sentence()).isEqualTo(sentence);
    assertThat(wrong.offset()).isEqualTo(offset);
    assertThat(wrong.remedy()).contains("write");
  }

  @Test
  void a_printed_length_reads_the_same_in_5000_seeded_trials() {
    Random random = new Random(4L);
    for (int trial = 0; trial < 5000; trial++) {
      Length length = RandomPlaces.length(random);
      assertThat(Length.parse(length.toString())).as(length.toString()).isEqualTo(length);
    }
  }
}

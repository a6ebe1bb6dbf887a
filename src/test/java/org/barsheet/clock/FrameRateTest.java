package org.barsheet.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.SyntaxException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameRateTest {

  private static FrameRate rate(String text) {
    return FrameRate.parse(text);
  }

  /**
   * Frame length in microseconds, labels in ten minutes, an hour and a day, real length of an hour
   * of labels. 17982, 107892 and 2589408 also stand in the smpte-timecode tests; the rest is
   * arithmetic.
   */
  @ParameterizedTest
  @CsvSource({
    "23.976, 41708.333, 14400, 86400, 2073600, 3603.6",
    "24, 41666.667, 14400, 86400, 2073600, 3600",
    "25, 40000.000, 15000, 90000, 2160000, 3600",
    "29.97, 33366.667, 18000, 108000, 2592000, 3603.6",
    "29.97df, 33366.667, 17982, 107892, 2589408, 3599.9964",
    "30, 33333.333, 18000, 108000, 2592000, 3600",
    "47.952, 20854.167, 28800, 172800, 4147200, 3603.6",
    "48, 20833.333, 28800, 172800, 4147200, 3600",
    "50, 20000.000, 30000, 180000, 4320000, 3600",
    "59.94, 16683.333, 36000, 216000, 5184000, 3603.6",
    "59.94df, 16683.333, 35964, 215784, 5178816, 3599.9964",
    "60, 16666.667, 36000, 216000, 5184000, 3600"
  })
  void every_rate_counts_as_published(
      String text, String frameMicroseconds, long tenMinutes, long hour, long day, String real) {
    FrameRate rate = rate(text);
    assertThat(rate.frameDuration().times(1_000_000).toDecimal(3)).hasToString(frameMicroseconds);
    assertThat(Timecode.parse(rate, "00:10:00:00").frame()).isEqualTo(tenMinutes);
    assertThat(Timecode.parse(rate, "01:00:00:00").frame()).isEqualTo(hour);
    assertThat(rate.framesPerDay()).isEqualTo(day);
    assertThat(rate.startOf(hour)).isEqualTo(Seconds.parse(real));
  }

  /** How far labels are from the clock after a real hour, in frames (arithmetic). */
  @ParameterizedTest
  @CsvSource({
    "23.976, -86.31",
    "24, 0.00",
    "29.97, -107.89",
    "29.97df, 0.11",
    "47.952, -172.63",
    "59.94, -215.78",
    "59.94df, 0.22"
  })
  void labels_drift_from_the_clock_as_reckoned(String text, String frames) {
    FrameRate rate = rate(text);
    Seconds hour = Seconds.of(3600);
    long labels = Timecode.parse(rate, "01:00:00:00").frame();
    BigFraction drift = hour.value().multiply(rate.framesPerSecond()).subtract(labels);
    assertThat(new Seconds(drift).toDecimal(2)).hasToString(frames);
  }

  /** Real seconds to the nearest frame; a tie goes to the later frame. */
  @ParameterizedTest
  @CsvSource({
    "0.5, 23.976, 12",
    "0.5, 24, 12",
    "0.5, 25, 13",
    "0.5, 29.97df, 15",
    "0.5, 30, 15",
    "0.5, 59.94df, 30",
    "1, 23.976, 24",
    "1, 24, 24",
    "1, 25, 25",
    "1, 29.97df, 30",
    "1, 59.94df, 60",
    "1.25, 23.976, 30",
    "1.25, 24, 30",
    "1.25, 25, 31",
    "1.25, 29.97, 37",
    "1.25, 30, 38",
    "1.25, 59.94df, 75",
    "12.34, 23.976, 296",
    "12.34, 24, 296",
    "12.34, 25, 309",
    "12.34, 29.97df, 370",
    "12.34, 30, 370",
    "12.34, 59.94df, 740",
    "60, 23.976, 1439",
    "60, 24, 1440",
    "60, 25, 1500",
    "60, 29.97df, 1798",
    "60, 30, 1800",
    "60, 59.94df, 3596",
    "187.5, 23.976, 4496",
    "187.5, 24, 4500",
    "187.5, 25, 4688",
    "187.5, 29.97df, 5619",
    "187.5, 30, 5625",
    "187.5, 59.94df, 11239",
    "600, 23.976, 14386",
    "600, 24, 14400",
    "600, 25, 15000",
    "600, 29.97df, 17982",
    "600, 30, 18000",
    "600, 59.94df, 35964",
    "3600, 23.976, 86314",
    "3600, 24, 86400",
    "3600, 25, 90000",
    "3600, 29.97df, 107892",
    "3600, 30, 108000",
    "3600, 59.94df, 215784"
  })
  void an_instant_has_its_nearest_frame(String seconds, String rate, long frame) {
    assertThat(rate(rate).nearestFrame(Seconds.parse(seconds))).isEqualTo(frame);
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 25, 12",
    "12.34, 25, 308",
    "187.5, 25, 4687",
    "3600, 23.976, 86313",
    "-0.01, 24, -1"
  })
  void the_frame_on_screen_is_the_one_that_has_begun(String seconds, String rate, long frame) {
    assertThat(rate(rate).frameShowing(Seconds.parse(seconds))).isEqualTo(frame);
  }

  /** The instant 187.5 s into a film that starts at 01:00:00:00 (arithmetic). */
  @ParameterizedTest
  @CsvSource({
    "23.976, 01:03:07:08", "24, 01:03:07:12", "25, 01:03:07:13", "29.97df, 01:03:07;15",
    "29.97, 01:03:07:09", "30, 01:03:07:15", "48, 01:03:07:24", "50, 01:03:07:25",
    "59.94df, 01:03:07;31", "60, 01:03:07:30"
  })
  void an_instant_after_the_first_hour_has_its_label(String text, String label) {
    FrameRate rate = rate(text);
    long first = Timecode.parse(rate, "01:00:00:00").frame();
    long frame = first + rate.nearestFrame(Seconds.of(375, 2));
    assertThat(Timecode.ofFrame(rate, frame)).hasToString(label);
  }

  @Test
  void rounding_up_carries_into_the_seconds() {
    long frame = FrameRate.FPS_25.nearestFrame(Seconds.parse("0.9999"));
    assertThat(Timecode.ofFrame(FrameRate.FPS_25, frame)).hasToString("00:00:01:00");
  }

  @Test
  void a_tie_goes_to_the_later_frame_before_zero_too() {
    assertThat(FrameRate.FPS_24.nearestFrame(Seconds.of(-1, 48))).isZero();
    assertThat(FrameRate.FPS_24.nearestFrame(Seconds.of(-3, 48))).isEqualTo(-1);
  }

  @Test
  void the_nearest_frame_equals_an_oracle_of_whole_numbers() {
    SplittableRandom random = new SplittableRandom(1);
    for (int trial = 0; trial < 20_000; trial++) {
      FrameRate rate = FrameRate.ALL.get(random.nextInt(FrameRate.ALL.size()));
      long numerator = random.nextLong(-1L << 40, 1L << 40);
      long denominator = random.nextLong(1, 1L << 20);
      BigInteger twice =
          BigInteger.valueOf(numerator).multiply(BigInteger.valueOf(2L * rate.numerator()));
      BigInteger bottom = BigInteger.valueOf(denominator * rate.denominator());
      BigInteger[] parts = twice.add(bottom).divideAndRemainder(bottom.shiftLeft(1));
      long expected = parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
      assertThat(rate.nearestFrame(Seconds.of(numerator, denominator))).isEqualTo(expected);
    }
  }

  @Test
  void the_start_of_a_frame_lies_on_it() {
    for (FrameRate rate : FrameRate.ALL) {
      for (long frame : new long[] {-1, 0, 1, 1799, 2_589_407}) {
        assertThat(rate.frameShowing(rate.startOf(frame))).isEqualTo(frame);
      }
    }
  }

  /** Spellings that OpenTimelineIO test_nearest_smpte_timecode_rate snaps to the exact rate. */
  @ParameterizedTest
  @CsvSource({
    "23.98, 24000/1001",
    "23.976, 24000/1001",
    "24000/1001, 24000/1001",
    "29.97, 30000/1001",
    "47.952, 48000/1001",
    "47.95, 48000/1001",
    "59.94, 60000/1001",
    "' 24 ', 24",
    "60, 60"
  })
  void rounded_spellings_mean_the_exact_rate(String text, String exact) {
    assertThat(rate(text).exactName()).isEqualTo(exact);
    assertThat(rate(text).dropFrame()).isFalse();
  }

  @Test
  void a_rate_prints_what_it_reads() {
    for (FrameRate rate : FrameRate.ALL) {
      assertThat(rate(rate.toString())).isEqualTo(rate);
    }
    assertThat(rate("29.97 DF")).isEqualTo(FrameRate.FPS_29_97_DF);
  }

  /** OpenTimelineIO raises on drop-frame at 24000/1001 as well. */
  @ParameterizedTest
  @CsvSource({"23.976df", "24df", "25df", "30df", "48df", "50df", "60df"})
  void drop_frame_elsewhere_is_refused(String text) {
    assertThatThrownBy(() -> rate(text))
        .isInstanceOf(SyntaxException.class)
        .hasMessageContaining("drop-frame exists at 29.97 and 59.94 only");
  }

  @ParameterizedTest
  @CsvSource({"12", "23.9", "abc", "''", "-24", "24fps"})
  void other_rates_are_refused_with_the_list(String text) {
    SyntaxException refused = catchThrowableOfType(SyntaxException.class, () -> rate(text));
    assertThat(refused.remedy())
        .isEqualTo("write one of 23.976 24 25 29.97 29.97df 30 47.952 48 50 59.94 59.94df 60");
  }

  @Test
  void drop_frame_of_a_rate_that_does_not_exist_is_no_rate_at_all() {
    assertThatThrownBy(() -> rate("12df"))
        .isInstanceOf(SyntaxException.class)
        .hasMessageContaining("'12df' isn't a frame rate");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, false",
    "-24, 1, false",
    "24001, 1001, false",
    "24000, 1000, false",
    "24, 1, true",
    "30000, 1, true",
    "24000, 1001, true",
    "48000, 1001, true"
  })
  void a_rate_that_does_not_exist_cannot_be_made(int numerator, int denominator, boolean drop) {
    assertThatThrownBy(() -> new FrameRate(numerator, denominator, drop))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void every_rate_there_is_can_be_made() {
    assertThat(FrameRate.ALL)
        .allSatisfy(
            rate ->
                assertThat(new FrameRate(rate.numerator(), rate.denominator(), rate.dropFrame()))
                    .isEqualTo(rate));
  }
}

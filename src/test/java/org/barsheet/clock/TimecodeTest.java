package org.barsheet.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.barsheet.input.SyntaxException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimecodeTest {

  private static FrameRate rate(String text) {
    return FrameRate.parse(text);
  }

  /** Pairs of OpenTimelineIO tests/test_opentime.py and npm smpte-timecode 1.3.6. */
  @ParameterizedTest
  @CsvSource({
    "29.97df, 0, 00:00:00;00",
    "29.97df, 1798, 00:00:59;28",
    "29.97df, 1799, 00:00:59;29",
    "29.97df, 1800, 00:01:00;02",
    "29.97df, 1801, 00:01:00;03",
    "29.97df, 3597, 00:01:59;29",
    "29.97df, 10789, 00:05:59;29",
    "29.97df, 10790, 00:06:00;02",
    "29.97df, 17981, 00:09:59;29",
    "29.97df, 17982, 00:10:00;00",
    "29.97df, 107957, 01:00:02;05",
    "29.97df, 150606, 01:23:45;06",
    "29.97df, 1078920, 10:00:00;00",
    "29.97df, 1084319, 10:03:00;05",
    "29.97, 1084319, 10:02:23:29",
    "59.94df, 7195, 00:01:59;59",
    "59.94df, 35964, 00:10:00;00",
    "59.94df, 1084319, 05:01:30;03",
    "59.94df, 2157840, 10:00:00;00",
    "25, 15000, 00:10:00:00",
    "25, 900000, 10:00:00:00",
    "25, 2999, 00:01:59:24"
  })
  void frames_have_the_labels_of_two_published_test_suites(String rate, long frame, String label) {
    assertThat(Timecode.ofFrame(rate(rate), frame)).hasToString(label);
    assertThat(Timecode.parse(rate(rate), label).frame()).isEqualTo(frame);
  }

  /** Reckoned by counting labels; the rules are those of ffmpeg {@code timecode.c}. */
  @ParameterizedTest
  @CsvSource({
    "3598, 00:02:00;02, 00:01:59:28",
    "5396, 00:03:00;02, 00:02:59:26",
    "8991, 00:04:59;29, 00:04:59:21",
    "8992, 00:05:00;02, 00:04:59:22",
    "19782, 00:11:00;02, 00:10:59:12",
    "107892, 01:00:00;00, 00:59:56:12",
    "2589407, 23:59:59;29, 23:58:33:17",
    "1800, 00:01:00;02, 00:01:00:00",
    "17982, 00:10:00;00, 00:09:59:12",
    "150606, 01:23:45;06, 01:23:40:06"
  })
  void at_29_97_both_ways_of_counting(long frame, String drop, String nonDrop) {
    assertThat(Timecode.ofFrame(FrameRate.FPS_29_97_DF, frame)).hasToString(drop);
    assertThat(Timecode.ofFrame(FrameRate.FPS_29_97, frame)).hasToString(nonDrop);
  }

  /** Reckoned by counting labels; the rules are those of ffmpeg {@code timecode.c}. */
  @ParameterizedTest
  @CsvSource({
    "3596, 00:00:59;56, 00:00:59:56",
    "3599, 00:00:59;59, 00:00:59:59",
    "3600, 00:01:00;04, 00:01:00:00",
    "7195, 00:01:59;59, 00:01:59:55",
    "7196, 00:02:00;04, 00:01:59:56",
    "35963, 00:09:59;59, 00:09:59:23",
    "35964, 00:10:00;00, 00:09:59:24",
    "39564, 00:11:00;04, 00:10:59:24",
    "215784, 01:00:00;00, 00:59:56:24",
    "219384, 01:01:00;04, 01:00:56:24",
    "5178815, 23:59:59;59, 23:58:33:35"
  })
  void at_59_94_both_ways_of_counting(long frame, String drop, String nonDrop) {
    assertThat(Timecode.ofFrame(FrameRate.FPS_59_94_DF, frame)).hasToString(drop);
    assertThat(Timecode.ofFrame(FrameRate.FPS_59_94, frame)).hasToString(nonDrop);
  }

  /** The 23.976 frames "behave exactly like 24" (OpenTimelineIO test_timecode_23976_fps). */
  @Test
  void at_23_976_labels_count_to_24() {
    assertThat(Timecode.ofFrame(FrameRate.FPS_23_976, 86_313)).hasToString("00:59:56:09");
    assertThat(Timecode.ofFrame(FrameRate.FPS_24, 86_313)).hasToString("00:59:56:09");
  }

  /** smpte-timecode wraps 23:59:40;00 + 21 s to 00:00:01;00; a rounded rate wraps too early. */
  @ParameterizedTest
  @CsvSource({
    "23.976, 23:59:59:23", "24, 23:59:59:23", "25, 23:59:59:24", "29.97, 23:59:59:29",
    "29.97df, 23:59:59;29", "30, 23:59:59:29", "47.952, 23:59:59:47", "48, 23:59:59:47",
    "50, 23:59:59:49", "59.94, 23:59:59:59", "59.94df, 23:59:59;59", "60, 23:59:59:59"
  })
  void a_day_wraps_after_its_last_label(String text, String last) {
    FrameRate rate = rate(text);
    long frame = Timecode.parse(rate, last).frame();
    assertThat(frame).isEqualTo(rate.framesPerDay() - 1);
    assertThat(Timecode.ofFrame(rate, frame + 1).frame()).isZero();
    assertThat(Timecode.ofFrame(rate, -1)).hasToString(last);
  }

  @Test
  void twenty_one_seconds_after_23_59_40_is_one_second_past_midnight() {
    FrameRate rate = FrameRate.FPS_29_97_DF;
    long frame = Timecode.parse(rate, "23:59:40;00").frame() + 21 * 30;
    assertThat(Timecode.ofFrame(rate, frame)).hasToString("00:00:01;00");
  }

  /** Refused in smpte-timecode 1.3.6 and OpenTimelineIO tests, too. */
  @ParameterizedTest
  @CsvSource({
    "29.97df, 00:01:00;00, 9",
    "29.97df, 00:01:00;01, 9",
    "59.94df, 00:02:00;00, 9",
    "59.94df, 00:02:00;03, 9",
    "24, 01:00:13:24, 9",
    "24, 40:00:00:00, 0",
    "24, 00:99:00:00, 3",
    "24, 00:00:99:00, 6",
    "24, 01:00:00;00, 8",
    "23.976, 01:00:00;00, 8",
    "24, 24:00:00:00, 0",
    "24, 1:2:3, 0",
    "24, bar 12, 0",
    "24, '', 0",
    "29.97, 00:01:00;02, 8"
  })
  void what_is_no_label_is_refused_at_the_character_that_is_wrong(
      String rate, String label, int offset) {
    SyntaxException refused =
        catchThrowableOfType(SyntaxException.class, () -> Timecode.parse(rate(rate), label));
    assertThat(refused.offset()).isEqualTo(offset);
    assertThat(refused.excerpt().get(1)).isEqualTo(" ".repeat(offset) + "^");
    assertThat(refused.sentence()).isNotBlank();
    assertThat(refused.remedy()).isNotBlank();
  }

  @Test
  void a_dropped_label_names_the_next_one_there_is() {
    assertThat(
            catchThrowableOfType(
                    SyntaxException.class,
                    () -> Timecode.parse(FrameRate.FPS_59_94_DF, "00:02:00:03"))
                .remedy())
        .isEqualTo("the next label there is 00:02:00;04");
  }

  @Test
  void a_colon_is_read_where_a_semicolon_is_printed() {
    assertThat(Timecode.parse(FrameRate.FPS_29_97_DF, " 1:00:12:00 ")).hasToString("01:00:12;00");
  }

  /** Hours 00 to 23, minutes and seconds 00 to 59 (SMPTE ST 12-1); a count from 0 has no minus. */
  @ParameterizedTest
  @CsvSource({
    "25, 24, 0, 0, 0",
    "25, 0, 60, 0, 0",
    "25, 0, 0, 60, 0",
    "25, 0, 0, 0, 25",
    "25, -1, 0, 0, 0",
    "25, 0, -1, 0, 0",
    "25, 0, 0, -1, 0",
    "25, 0, 0, 0, -1",
    "29.97df, 0, 1, 0, 1",
    "59.94df, 0, 1, 0, 3"
  })
  void a_label_out_of_range_cannot_be_made(
      String rate, int hours, int minutes, int seconds, int frames) {
    assertThatThrownBy(() -> new Timecode(rate(rate), hours, minutes, seconds, frames))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void the_last_label_of_a_day_can_be_made() {
    assertThat(new Timecode(FrameRate.FPS_25, 23, 59, 59, 24)).hasToString("23:59:59:24");
  }

  @ParameterizedTest
  @CsvSource({
    "24:00:00:00, hours run from 00 to 23",
    "01:60:00:00, minutes run from 00 to 59",
    "01:00:60:00, seconds run from 00 to 59",
    "01:00:00:24, frames at 24 run from 00 to 23"
  })
  void the_first_number_too_many_is_refused_with_the_last_there_is(String label, String remedy) {
    assertThat(
            catchThrowableOfType(
                    SyntaxException.class, () -> Timecode.parse(FrameRate.FPS_24, label))
                .remedy())
        .isEqualTo(remedy);
  }

  @Test
  void a_semicolon_where_frames_are_not_dropped_leads_to_the_rate_that_drops_them() {
    assertThatThrownBy(() -> Timecode.parse(FrameRate.parse("29.97"), "01:00:00;00"))
        .isInstanceOfSatisfying(
            SyntaxException.class,
            wrong -> assertThat(wrong.remedy()).contains("frame-rate 29.97df"));
    assertThatThrownBy(() -> Timecode.parse(FrameRate.FPS_24, "01:00:00;00"))
        .isInstanceOfSatisfying(
            SyntaxException.class, wrong -> assertThat(wrong.remedy()).doesNotContain("df"));
  }

  @Test
  void labels_past_midnight_come_after_those_before_it() {
    Timecode evening = Timecode.parse(FrameRate.FPS_24, "23:59:30:00");
    Timecode morning = Timecode.parse(FrameRate.FPS_24, "00:00:30:00");
    assertThat(morning.framesSince(evening)).isEqualTo(60 * 24);
    assertThat(evening.framesSince(morning)).isEqualTo(-60 * 24);
    Timecode drop = Timecode.parse(FrameRate.FPS_29_97_DF, "23:59:59;29");
    assertThat(Timecode.parse(FrameRate.FPS_29_97_DF, "00:00:00;00").framesSince(drop)).isOne();
    assertThat(evening.framesSince(evening)).isZero();
  }
}

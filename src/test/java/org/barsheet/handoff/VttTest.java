package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.data.Offset;
import org.barsheet.clock.FrameRate;
import org.barsheet.cues.Cue;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.VttParser.ParsedCue;
import org.barsheet.handoff.VttParser.ParsedFile;
import org.barsheet.timing.Shot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class VttTest {

  private static ParsedFile cues(FilmSheet sheet) {
    return VttParser.parse(new String(CuesVtt.bytes(sheet), StandardCharsets.UTF_8));
  }

  private static ParsedFile chapters(FilmSheet sheet) {
    return VttParser.parse(new String(ChaptersVtt.bytes(sheet), StandardCharsets.UTF_8));
  }

  static List<FrameRate> rates() {
    return FrameRate.ALL;
  }

  @Test
  void a_cue_reads_as_people_say_it() {
    String file =
        new String(CuesVtt.bytes(SampleFilm.at(FrameRate.FPS_24).sheet()), StandardCharsets.UTF_8);
    assertThat(file)
        .startsWith(
            """
            WEBVTT

            NOTE Times run from the film's first frame; timecode at 24 fps, \
            non-drop-frame; film frame 0 is 01:00:00:00

            bar-1
            00:00:02.625 --> 00:00:03.625
            bar 1 · panel 1

            glimmer-1
            00:00:06.375 --> 00:00:08.250
            glimmer 1 · bar 3 · tonal, up a fourth · accent on frame 183, 01:00:07:15 · panel 2
            """);
  }

  /** Panel 10 sits on glimmer; one of its shutters lands later, at a place of its own. */
  @Test
  void a_reveal_that_lands_off_the_accent_is_named_with_its_own_frame() {
    FilmSheet sheet = DemoFilm.sheet();
    List<PlannedReveal> offAccent =
        sheet.reveals().stream()
            .filter(reveal -> reveal.landsFrame() != cueOf(sheet, reveal).accentFrame())
            .toList();
    assertThat(offAccent).isNotEmpty();
    List<ParsedCue> parsed = cues(sheet).cues();
    for (PlannedReveal reveal : offAccent) {
      String words = reveal.opening().name() + " lands on frame " + reveal.landsFrame() + ", ";
      assertThat(parsed)
          .filteredOn(cue -> cue.text().contains(words))
          .singleElement()
          .satisfies(
              cue -> assertThat(cue.text()).startsWith(cueOf(sheet, reveal).title() + " · "));
    }
  }

  private static Cue cueOf(FilmSheet sheet, PlannedReveal reveal) {
    return sheet.timing().shots().get(reveal.shot()).cue();
  }

  @ParameterizedTest
  @MethodSource("rates")
  void a_cue_starts_within_half_a_millisecond_of_its_frame(FrameRate rate) {
    FilmSheet sheet = SampleFilm.at(rate).sheet();
    List<ParsedCue> parsed = cues(sheet).cues();
    assertThat(parsed).hasSameSizeAs(sheet.timing().cues());
    for (int i = 0; i < parsed.size(); i++) {
      Cue cue = sheet.timing().cues().get(i);
      double exact = 1000.0 * cue.frame() * rate.denominator() / rate.numerator();
      assertThat((double) parsed.get(i).startMilliseconds())
          .isCloseTo(exact, Offset.offset(0.5001));
    }
  }

  @ParameterizedTest
  @MethodSource("rates")
  void chapters_are_the_shots_end_to_end(FrameRate rate) {
    FilmSheet sheet = SampleFilm.at(rate).sheet();
    List<ParsedCue> chapters = chapters(sheet).cues();
    VttParser.requireNestedOrApart(chapters);
    assertThat(chapters).hasSameSizeAs(sheet.timing().shots());
    assertThat(chapters.get(0).startMilliseconds()).isZero();
    for (int i = 1; i < chapters.size(); i++) {
      assertThat(chapters.get(i).startMilliseconds())
          .isEqualTo(chapters.get(i - 1).endMilliseconds());
    }
    assertThat(chapters.get(1).text()).isEqualTo("Panel 2: The baker's lamp");
  }

  @Test
  void the_rate_and_drop_frame_are_stated() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_59_94_DF).from("10:00:00;00").sheet();
    assertThat(cues(sheet).notes().get(0))
        .contains("59.94 fps, drop-frame")
        .contains("10:00:00;00");
    assertThat(chapters(sheet).notes().get(0)).contains("59.94 fps, drop-frame");
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_stays_inside_its_cue(String text) {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_30).saying(text).sheet();
    assertThat(cues(sheet).cues()).hasSameSizeAs(sheet.timing().cues());
    assertThat(chapters(sheet).cues()).hasSameSizeAs(sheet.timing().shots());
  }

  @Test
  void angle_brackets_and_ampersands_come_back_as_typed() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_30).saying(" <Fog> & light").sheet();
    Shot first = sheet.timing().shots().get(0);
    assertThat(chapters(sheet).cues().get(0).text())
        .isEqualTo("Panel " + first.panel().name() + ": " + first.panel().action());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "WEBVTT\n\n00:01.000 --> 00:01.000\nno length\n",
        "WEBVTT\n\n00:01.00 --> 00:02.000\ntwo decimals\n",
        "WEBVTT\n\n00:60.000 --> 01:02.000\nsixty seconds\n",
        "WEBVTT\n\n00:01.000 --> 00:02.000\n<b>tag\n",
        "WEBVTT\n\n00:05.000 --> 00:06.000\nlate\n\n00:01.000 --> 00:02.000\nearly\n",
        "WebVTT\n\n00:01.000 --> 00:02.000\nsignature\n",
      })
  void the_parser_of_these_tests_refuses_what_the_rules_forbid(String file) {
    assertThatThrownBy(() -> VttParser.parse(file)).isInstanceOf(AssertionError.class);
  }
}

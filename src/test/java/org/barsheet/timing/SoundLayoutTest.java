package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.timing.SoundLayout.Click;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SoundLayoutTest {

  private static SoundLayout layout(FrameRate rate) {
    return SoundLayout.of(SampleFilm.at(rate).sheet().timing());
  }

  /** 3/4 at 96 with a pickup of one beat: two bars of count-in are 5 clicks, 3.125 s. */
  @Test
  void a_pickup_takes_its_beats_from_the_count_in() {
    List<Click> countIn =
        layout(FrameRate.FPS_24).clicks().stream().filter(Click::countIn).toList();
    assertThat(countIn).hasSize(5);
    assertThat(countIn.get(0).at()).isEqualTo(Seconds.of(2).minus(Seconds.of(25, 8)));
    assertThat(countIn)
        .extracting(Click::downbeat)
        .containsExactly(true, false, false, true, false);
  }

  @Test
  void clicks_follow_the_felt_beat_through_a_change_of_tempo() {
    List<Click> music =
        layout(FrameRate.FPS_24).clicks().stream().filter(click -> !click.countIn()).toList();
    assertThat(music).hasSize(1 + 8 * 3);
    // The pickup on beat 3, then bar 1; bars 1 to 4 at 96, bars 5 to 8 at 80 bpm.
    assertThat(music.get(0)).isEqualTo(new Click(Seconds.of(2), false, false));
    assertThat(music.get(1)).isEqualTo(new Click(Seconds.of(21, 8), true, false));
    assertThat(music.get(13)).isEqualTo(new Click(Seconds.parse("10.125"), true, false));
    assertThat(music.get(24)).isEqualTo(new Click(Seconds.parse("18.375"), false, false));
  }

  @Test
  void the_music_is_heard_from_the_frame_it_was_put_on() {
    // 2 s after the first frame is frame 48, which begins at 2.002 s at 23.976.
    SoundLayout layout = layout(FrameRate.FPS_23_976);
    Click first =
        layout.clicks().stream().filter(click -> !click.countIn()).findFirst().orElseThrow();
    assertThat(first.at()).isEqualTo(Seconds.of(48 * 1001, 24000));
    assertThat(layout.sampleAt(first.at())).isEqualTo(8 * 48_000 + 96_096);
  }

  static List<FrameRate> rates() {
    return FrameRate.ALL;
  }

  @ParameterizedTest
  @MethodSource("rates")
  void the_head_is_whole_seconds_and_the_tail_lets_the_sound_die_away(FrameRate rate) {
    FilmSheet sheet = SampleFilm.at(rate).sheet();
    SoundLayout layout = SoundLayout.of(sheet.timing());
    assertThat(layout.headSeconds()).isEqualTo(8);
    long filmEnd = layout.sampleAt(rate.startOf(sheet.timing().lengthFrames()));
    assertThat(layout.lengthSamples()).isGreaterThanOrEqualTo(filmEnd + 2 * 48_000);
  }

  /**
   * Samples since midnight of label 01:00:00:00 at 48 kHz: 172800000 at whole rates, a thousandth
   * more at 23.976 and 29.97, 172799827.2 with drop-frame; the file begins 8 s earlier.
   */
  @ParameterizedTest
  @CsvSource({
    "24, 01:00:00:00, 172800000",
    "25, 01:00:00:00, 172800000",
    "30, 01:00:00:00, 172800000",
    "23.976, 01:00:00:00, 172972800",
    "29.97, 01:00:00:00, 172972800",
    "29.97df, 01:00:00;00, 172799827"
  })
  void the_time_reference_is_the_timecode_of_the_file_s_first_sample(
      String rate, String label, long filmStart) {
    FilmSheet sheet = SampleFilm.at(FrameRate.parse(rate)).from(label).sheet();
    long reference = SoundLayout.of(sheet.timing()).samplesSinceMidnight(sheet.plan().film());
    assertThat(reference).isEqualTo(filmStart - 8 * 48_000);
  }

  @Test
  void a_head_before_midnight_belongs_to_the_day_before() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_25).from("00:00:00:00").sheet();
    long reference = SoundLayout.of(sheet.timing()).samplesSinceMidnight(sheet.plan().film());
    assertThat(reference).isEqualTo((86_400L - 8) * 48_000);
  }
}

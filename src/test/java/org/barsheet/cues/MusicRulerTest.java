package org.barsheet.cues;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Length;
import org.barsheet.plan.Length.Unit;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Music measured against film. At 96 a minute and 24 fps a beat has 15 frames; at 110 it has 13
 * 1/11, so beats fall on frames 0, 13, 26, 39, 52, 65, 79 and none begins with its frame.
 */
class MusicRulerTest {

  private static MusicRuler ruler(MusicBuilder music) {
    return ruler(music, 0);
  }

  private static MusicRuler ruler(MusicBuilder music, long musicStartFrame) {
    return new MusicRuler(
        music.build(), new FilmClock(FrameRate.FPS_24, musicStartFrame, Seconds.ZERO));
  }

  private static MusicRuler plain() {
    return ruler(new MusicBuilder().tempo(96).bars(4));
  }

  private static MusicRuler offTheFrames() {
    return ruler(new MusicBuilder().tempo(110).bars(4));
  }

  private static MusicRuler withPickup() {
    return ruler(new MusicBuilder().tempo(96).pickup(1).bars(6));
  }

  private static long after(MusicRuler ruler, long frame, Unit unit, int amount) {
    return ruler.frameAfter(ruler.momentOf(frame), unit, BigFraction.of(amount));
  }

  @ParameterizedTest
  @CsvSource({"0, 255", "-24, 255"})
  void bars_count_from_the_first_full_bar_at_a_pickup_and_before_it(int frame, int end) {
    assertThat(after(withPickup(), frame, Unit.BARS, 4)).isEqualTo(end);
  }

  @Test
  void bars_count_on_from_a_full_bar_with_or_without_a_pickup() {
    assertThat(after(withPickup(), 15, Unit.BARS, 4)).isEqualTo(15 + 4 * 60);
    assertThat(after(plain(), 0, Unit.BARS, 3)).isEqualTo(3 * 60);
  }

  @Test
  void beats_count_the_pickups_own() {
    assertThat(after(withPickup(), 0, Unit.BEATS, 4)).isEqualTo(60);
  }

  @Test
  void the_pickup_takes_nothing_from_the_bars_between_two_moments() {
    MusicRuler ruler = withPickup();
    Seconds barFive = ruler.momentOf(255);
    assertThat(ruler.between(Seconds.ZERO, barFive, Unit.BARS)).isEqualTo(BigFraction.of(4));
    assertThat(ruler.between(Seconds.ZERO, barFive, Unit.BEATS)).isEqualTo(BigFraction.of(17));
  }

  @Test
  void a_piece_of_one_short_bar_has_no_other_bar_to_count_from() {
    MusicRuler ruler = ruler(new MusicBuilder().tempo(96).pickup(3));
    assertThat(after(ruler, 0, Unit.BARS, 1)).isEqualTo(45);
  }

  @Test
  void a_first_panel_of_four_bars_leaves_the_pickup_aside() {
    TimingSheet sheet =
        new PlanBuilder(new MusicBuilder().tempo(96).pickup(1).bars(8))
            .panel("", "4 bars")
            .panel("", "")
            .time();
    assertThat(sheet.shots().get(1).frames().start()).isEqualTo(255);
    assertThat(sheet.shots().get(1).startsAt()).hasToString("bar 5");
    assertThat(sheet.shots().get(0).got()).isEqualTo("4 bars");
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "13, 1", "26, 2", "39, 3", "79, 6"})
  void a_frame_on_which_a_felt_beat_falls_is_that_beat_exactly(long frame, int beats) {
    MusicRuler ruler = offTheFrames();
    assertThat(ruler.momentOf(frame)).isEqualTo(Seconds.of(60L * beats, 110));
    assertThat(ruler.locateFrame(frame)).isEqualTo(ruler.beats().get(beats).place());
  }

  @ParameterizedTest
  @CsvSource({"12", "14", "25", "27", "78", "80"})
  void the_frames_beside_a_beat_are_what_they_are(long frame) {
    MusicRuler ruler = offTheFrames();
    assertThat(ruler.momentOf(frame)).isEqualTo(Seconds.of(frame, 24));
    assertThat(ruler.locateFrame(frame)).isEqualTo(ruler.locate(Seconds.of(frame, 24)));
    assertThat(ruler.beats()).noneMatch(beat -> beat.place().equals(ruler.locateFrame(frame)));
  }

  /** Six beats are 78.55 frames and end on 79; counted from the frame they would end on 78. */
  @Test
  void what_is_counted_from_a_frame_on_the_beat_is_counted_from_the_beat() {
    assertThat(after(offTheFrames(), 26, Unit.BARS, 1)).isEqualTo(79);
    assertThat(after(offTheFrames(), 26, Unit.BEATS, 4)).isEqualTo(79);
    assertThat(after(offTheFrames(), 26, Unit.FRAMES, 52)).isEqualTo(78);
  }

  @Test
  void a_panel_after_a_locked_one_that_ends_on_a_beat_is_measured_from_that_beat() {
    TimingSheet sheet =
        new PlanBuilder(new MusicBuilder().tempo(110).bars(4))
            .panel("", "")
            .locked(0, 26)
            .panel("", "")
            .panel("1 bar into panel 2", "")
            .time();
    assertThat(sheet.shots().get(1).startsAt()).hasToString("bar 1 beat 3");
    assertThat(sheet.shots().get(2).frames().start()).isEqualTo(79);
  }

  @Test
  void the_latest_beat_at_a_frame_is_the_one_on_it_and_else_the_one_before() {
    MusicRuler ruler = offTheFrames();
    assertThat(ruler.latestBeatAtOrBefore(26)).hasValue(ruler.beats().get(2));
    assertThat(ruler.latestBeatAtOrBefore(25)).hasValue(ruler.beats().get(1));
    assertThat(ruler.latestBeatAtOrBefore(0)).hasValue(ruler.beats().get(0));
    assertThat(ruler.latestBeatAtOrBefore(-1)).isEmpty();
  }

  @Test
  void a_beat_before_the_film_is_no_beat_to_cut_on() {
    assertThat(ruler(new MusicBuilder().tempo(96).bars(4), -20).latestBeatAtOrBefore(-1)).isEmpty();
    assertThat(ruler(new MusicBuilder().tempo(96).bars(4), -15).latestBeatAtOrBefore(0))
        .hasValueSatisfying(beat -> assertThat(beat.frame()).isZero());
  }

  @Test
  void beats_between_two_frames_count_both_ends() {
    MusicRuler ruler = plain();
    assertThat(frames(ruler.beatsBetween(15, 45))).containsExactly(15L, 30L, 45L);
    assertThat(frames(ruler.beatsBetween(16, 44))).containsExactly(30L);
    assertThat(frames(ruler.beatsBetween(15, 15))).containsExactly(15L);
    assertThat(ruler.beatsBetween(16, 15)).isEmpty();
  }

  private static List<Long> frames(List<FilmBeat> beats) {
    return beats.stream().map(FilmBeat::frame).toList();
  }

  @Test
  void bars_and_beats_count_from_the_musics_start_for_moments_before_it() {
    MusicRuler ruler = ruler(new MusicBuilder().tempo(96).bars(4), 48);
    assertThat(after(ruler, 0, Unit.BARS, 2)).isEqualTo(48 + 120);
    assertThat(after(ruler, 0, Unit.SECONDS, 2)).isEqualTo(48);
    assertThat(ruler.isBeforeMusic(47)).isTrue();
    assertThat(ruler.isBeforeMusic(48)).isFalse();
  }

  @Test
  void a_range_of_a_length_has_its_least_and_its_most_frames() {
    Length range = Length.parse("1..2 bars");
    assertThat(offTheFrames().leastFrames(Seconds.ZERO, range)).isEqualTo(52);
    assertThat(offTheFrames().mostFrames(Seconds.ZERO, range)).isEqualTo(105);
  }
}

package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.barsheet.timing.Reveals.reveal;

import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FramesPerBeat;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Slow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photographs on ones, twos and threes, as animators count them at 24 fps. */
class PhotographsOnTwosTest {

  private static final FrameRate RATE = FrameRate.FPS_24;

  /**
   * Published: brianlemay.com, readingtimingcharts.html (ones 24, twos 12); threes by arithmetic.
   */
  @ParameterizedTest
  @CsvSource({"1, 24", "2, 12", "3, 8"})
  void a_second_holds_so_many_photographs(int framesPerPhotograph, int photographs) {
    long frames =
        PhotographRun.asAsked(reveal("lamp-1", photographs, framesPerPhotograph)).frames();
    assertThat(RATE.startOf(frames)).isEqualTo(Seconds.of(1));
  }

  /**
   * Published: brianlemay.com, readingtimingcharts.html: 3 drawings on twos are a quarter second.
   */
  @ParameterizedTest
  @CsvSource({"3, 6", "5, 10", "7, 14"})
  void photographs_on_twos_take_twice_as_many_frames(int photographs, long frames) {
    assertThat(PhotographRun.asAsked(reveal("lamp-1", photographs, 2)).frames()).isEqualTo(frames);
  }

  /**
   * Published as kinds of spacing: brianlemay.com, readingtimingcharts.html (even, slow out, slow
   * in, both ends cushioned). Half of the photographs leave half the way undone where the end is
   * slow.
   */
  @ParameterizedTest
  @CsvSource({"NONE, 0.5", "START, 0.25", "END, 0.75", "BOTH, 0.5"})
  void the_middle_photograph_of_a_spacing(Slow slow, double done) {
    assertThat(slow.progress(0.5)).isCloseTo(done, within(1e-12));
    assertThat(slow.progress(0)).isZero();
    assertThat(slow.progress(1)).isEqualTo(1);
  }

  /** From memory (Williams, The Animator's Survival Kit): frames a step, as steps a minute. */
  @ParameterizedTest
  @CsvSource({"4, 360", "6, 240", "8, 180", "12, 120", "16, 90", "20, 72", "24, 60"})
  void steps_of_a_walk_or_a_run(int frames, int stepsAMinute) {
    FramesPerBeat step = new FramesPerBeat(8L * frames);
    assertThat(step.beatsPerMinute(RATE)).isEqualTo(BigFraction.of(stepsAMinute));
  }

  /** Plain arithmetic: beats of 12, 16 and 20 frames lie on twos, of 14.4 and 11.25 they do not. */
  @ParameterizedTest
  @CsvSource({"12, 1, true", "16, 1, true", "20, 1, true", "72, 5, false", "45, 4, false"})
  void beats_of_an_even_length_stay_on_twos(int top, int bottom, boolean stay) {
    assertThat(beats(BigFraction.of(top, bottom)).allMatch(frame -> frame % 2 == 0))
        .isEqualTo(stay);
  }

  /**
   * Plain arithmetic: a beat is never more than a frame from the nearest place on twos or threes.
   */
  @ParameterizedTest
  @CsvSource({"72, 5", "45, 4", "25, 2", "1440, 97"})
  void a_beat_is_at_most_a_frame_off_the_grid(int top, int bottom) {
    for (int grid = 2; grid <= 3; grid++) {
      int every = grid;
      assertThat(beats(BigFraction.of(top, bottom)))
          .allMatch(frame -> Math.min(frame % every, every - frame % every) <= 1);
    }
  }

  private static LongStream beats(BigFraction frames) {
    return LongStream.rangeClosed(0, 200)
        .map(beat -> RATE.nearestFrame(RATE.frameDuration().times(frames.multiply(beat))));
  }

  /**
   * Plain arithmetic: 30 photographs on twos begin 58 frames before the accent, cut 4 beats before.
   */
  @ParameterizedTest
  @CsvSource({"80, 14", "96, 2", "120, -10"})
  void room_left_for_the_closed_hold(int beatsAMinute, long frames) {
    long beats = 4L * 24 * 60 / beatsAMinute;
    assertThat(beats - reveal("lamp-1", 30, 2).span().before()).isEqualTo(frames);
  }

  /** Index round-half-up(k × 30 / 20), worked by hand. */
  @Test
  void twenty_photographs_out_of_thirty() {
    assertThat(IntStream.rangeClosed(1, 20).map(k -> PhotographRun.photograph(30, 20, k)))
        .containsExactly(2, 3, 5, 6, 8, 9, 11, 12, 14, 15, 17, 18, 20, 21, 23, 24, 26, 27, 29, 30);
  }
}

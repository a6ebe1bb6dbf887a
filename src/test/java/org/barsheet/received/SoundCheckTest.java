package org.barsheet.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clips.ClipFacts.Sound;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Performer;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Test;

/**
 * A bar lasts 4 s, the music starts 2 s after the film, which begins at 01:00:00:00 and has 24 fps.
 * The cello plays from bar 2 (6 s) to the end of bar 5 (22 s).
 */
class SoundCheckTest {

  private static final Seconds HOUR = Seconds.of(3600);

  private static TimingSheet timing() {
    MusicBuilder music =
        new MusicBuilder().tempo(60).bars(8).note(1, 48, 2, 1, 4).note(1, 50, 5, 1, 4);
    return new PlanBuilder(music)
        .musicStarts(Seconds.of(2))
        .performer("cello", "Cello")
        .performer("flute", "")
        .panel("", "")
        .time();
  }

  /** A file of so many seconds. */
  private record Came(
      Seconds length,
      int rate,
      Optional<Seconds> header,
      Optional<Seconds> told,
      Optional<HeardPlace> heard) {

    static Came lasting(long seconds) {
      return new Came(
          Seconds.of(seconds), 48_000, Optional.empty(), Optional.empty(), Optional.empty());
    }

    Came at(int samplesPerSecond) {
      return new Came(length, samplesPerSecond, header, told, heard);
    }

    /** By its header, since midnight. */
    Came from(Seconds sinceMidnight) {
      return new Came(length, rate, Optional.of(sinceMidnight), told, heard);
    }

    /** By the plan, from the music's start. */
    Came told(Seconds start) {
      return new Came(length, rate, header, Optional.of(start), heard);
    }

    /** By its sound, from the music's start; within so many milliseconds. */
    Came heard(Seconds start, double drift, double within) {
      HeardPlace place = new HeardPlace(start, drift, 0.9, within, "the guide");
      return new Came(length, rate, header, told, Optional.of(place));
    }
  }

  private static List<String> told(Came came) {
    return told(came, "cello");
  }

  private static List<String> told(Came came, String who) {
    TimingSheet timing = timing();
    Performer p = timing.plan().performer(who).orElseThrow();
    Performer sender =
        new Performer(
            p.name(),
            p.part(),
            "take.wav",
            p.clipRate(),
            p.clap(),
            came.told(),
            0,
            0,
            p.clothes(),
            p.behind(),
            p.where());
    Optional<Sound> sound = Optional.of(new Sound(came.rate()));
    ClipFacts facts = new ClipFacts(came.length(), Optional.empty(), sound, true, came.header());
    ReceivedClip clip = ReceivedClip.received(sender, facts);
    ReceivedClip listened = came.heard().map(clip::heardAt).orElse(clip);
    return Stream.of(PlaceCheck.of(listened, timing), SoundCheck.of(listened, timing))
        .flatMap(List::stream)
        .map(fault -> fault.severity() + " " + fault.sentence())
        .toList();
  }

  @Test
  void a_take_that_covers_the_part_is_not_spoken_of() {
    assertThat(told(Came.lasting(24).told(Seconds.of(-2)))).isEmpty();
    assertThat(told(Came.lasting(24).from(HOUR))).isEmpty();
    assertThat(told(Came.lasting(24).from(HOUR).told(Seconds.of(-2)))).isEmpty();
  }

  /** From 0 s to 20 s of the film: 2 s are missing, 48 frames. */
  @Test
  void a_take_that_ends_before_the_part_is_too_short() {
    assertThat(told(Came.lasting(20).from(HOUR)))
        .containsExactly(
            "WARNING take.wav is 48 frames of the film too short: Cello plays until 01:00:22:00");
  }

  @Test
  void a_take_that_begins_after_the_part_is_too_late() {
    assertThat(told(Came.lasting(60).told(Seconds.of(9, 2))))
        .containsExactly(
            "WARNING take.wav begins 12 frames of the film too late: Cello plays from"
                + " 01:00:06:00");
  }

  @Test
  void a_take_that_does_not_say_when_it_begins_is_held_against_the_part_s_length() {
    String unknown = "WARNING take.wav doesn't say when it begins, so it can't be placed";
    assertThat(told(Came.lasting(16))).containsExactly(unknown);
    assertThat(told(Came.lasting(15)))
        .containsExactly(
            unknown,
            "WARNING take.wav is at least 24 frames of the film too short: Cello plays for 16.0"
                + " s");
  }

  /** 14:23:10 is far from a film at one o'clock. */
  @Test
  void a_time_of_day_is_no_time_of_the_film() {
    assertThat(told(Came.lasting(60).from(Seconds.of(51_790))))
        .containsExactly(
            "WARNING take.wav carries a time of day, not film timecode, so it can't be placed");
  }

  @Test
  void a_header_that_speaks_against_the_plan_is_told_and_the_plan_followed() {
    assertThat(told(Came.lasting(24).from(HOUR).told(Seconds.of(-3, 2))))
        .containsExactly(
            "WARNING take.wav says it begins at 01:00:00:00, the plan says 01:00:00:12: 12 frames of"
                + " the film apart; the plan wins");
  }

  /**
   * 44.1 kHz read as 48 kHz: the 22 s to the end of the part last 22 × 0.91875 s, 1.7875 s or 42.9
   * frames less. 48048 Hz is 48 kHz pulled up by a thousandth: 22 ms in 22 s, half a frame.
   */
  @Test
  void another_sampling_rate_is_told_with_its_drift() {
    assertThat(told(Came.lasting(24).from(HOUR).at(44_100)))
        .containsExactly(
            "WARNING take.wav has 44100 samples a second, not 48000: unconverted, it is 43"
                + " frames of the film early at the end of the part");
    assertThat(told(Came.lasting(24).from(HOUR).at(48_048)))
        .containsExactly(
            "WARNING take.wav has 48048 samples a second, not 48000: unconverted, it is 1"
                + " frame of the film late at the end of the part");
    assertThat(told(Came.lasting(24).from(HOUR).at(48_001)))
        .containsExactly("REMARK take.wav has 48001 samples a second, not 48000");
  }

  @Test
  void who_plays_no_part_sends_what_they_like() {
    assertThat(told(Came.lasting(1), "flute")).isEmpty();
  }

  @Test
  void a_take_is_placed_by_its_sound_where_nothing_else_says_when_it_begins() {
    assertThat(told(Came.lasting(24).heard(Seconds.of(-2), 10, 3)))
        .containsExactly(
            "REMARK take.wav is placed by its sound (the guide): it starts -2.000 s from the"
                + " music's start, to 3 ms");
    assertThat(told(Came.lasting(24).heard(Seconds.of(-2), 10, 50)))
        .containsExactly("WARNING take.wav isn't found by its sound, so it can't be placed");
  }

  /** A quarter of a second is 6 frames of 24. */
  @Test
  void sound_that_speaks_against_the_plan_or_the_timecode_is_told_in_frames() {
    assertThat(told(Came.lasting(24).heard(Seconds.of(-2), 0, 3).told(Seconds.of(-9, 4))))
        .containsExactly(
            "WARNING take.wav sounds as if it begins at 01:00:00:00, the plan says 00:59:59:18: 6"
                + " frames of the film apart; the plan wins");
    assertThat(told(Came.lasting(24).heard(Seconds.of(-2), 0, 3).told(Seconds.of(-49, 24))))
        .isEmpty();
    assertThat(told(Came.lasting(24).heard(Seconds.of(-9, 4), 0, 3).from(HOUR)))
        .contains(
            "WARNING take.wav says it begins at 01:00:00:00, its sound says 00:59:59:18: 6 frames"
                + " of the film apart; the sound wins");
  }

  /** 24 s at 3,000 millionths are 72 ms, 1.7 frames of 24. */
  @Test
  void a_clock_that_drifts_a_frame_is_told() {
    assertThat(told(Came.lasting(24).told(Seconds.of(-2)).heard(Seconds.of(-2), 3_000, 3)))
        .containsExactly("WARNING take.wav runs fast: by its end it is 2 frames of the film early");
  }
}

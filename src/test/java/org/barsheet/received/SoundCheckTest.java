package org.barsheet.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
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
  private record Came(Seconds length, int rate, Optional<Seconds> header, Optional<Seconds> told) {

    static Came lasting(long seconds) {
      return new Came(Seconds.of(seconds), 48_000, Optional.empty(), Optional.empty());
    }

    Came at(int samplesPerSecond) {
      return new Came(length, samplesPerSecond, header, told);
    }

    /** By its header, since midnight. */
    Came from(Seconds sinceMidnight) {
      return new Came(length, rate, Optional.of(sinceMidnight), told);
    }

    /** By the plan, from the music's start. */
    Came told(Seconds start) {
      return new Came(length, rate, header, Optional.of(start));
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
    Sound sound = new Sound(came.rate(), came.header());
    ClipFacts facts = new ClipFacts(came.length(), Optional.empty(), Optional.of(sound));
    return SoundCheck.of(ReceivedClip.received(sender, facts), timing).stream()
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
    String unknown = "REMARK take.wav doesn't say when it begins, so it can't be placed";
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
            "REMARK take.wav carries a time of day, not film timecode, so it can't be placed");
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
}

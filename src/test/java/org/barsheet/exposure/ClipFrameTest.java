package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmClock;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

class ClipFrameTest {

  private static final Where WHERE = new Where("plan.yaml", "line 1");
  private static final FilmClock CLOCK = new FilmClock(FrameRate.FPS_24, 48, Seconds.ZERO);

  private static Appearance appearance(
      Optional<FrameRate> clipRate, Optional<Performer.Clap> clap) {
    return new Appearance(
        0,
        new Performer(
            "cello",
            "Cello",
            "cello.mov",
            clipRate,
            clap,
            Optional.empty(),
            0,
            0,
            List.of(),
            "",
            WHERE),
        new Opening(
            "lamp-1",
            new Rect(3, 7, 2, 4),
            "quay",
            new Opening.Hinged(Opening.Side.LEFT, 90),
            List.of(),
            WHERE),
        new FrameSpan(48, 1548),
        1);
  }

  private static Appearance clapped(FrameRate rate) {
    return appearance(Optional.of(rate), Optional.of(new Performer.Clap(Seconds.of(-5), 143)));
  }

  /** 143 + 67.5 s at 30000/1001 is 2165.98: exact arithmetic by hand. */
  @Test
  void counts_from_the_clap_at_the_clip_s_own_rate() {
    long frame = 48 + 1500; // 62.5 s after the music's start at 24 fps
    assertThat(clapped(FrameRate.FPS_29_97).clipFrameAt(CLOCK, frame)).hasValue(2166);
  }

  @Test
  void the_clap_s_own_moment_is_its_frame() {
    assertThat(clapped(FrameRate.FPS_25).clipFrameAt(CLOCK, 48 - 120)).hasValue(143);
  }

  @Test
  void a_moment_before_the_clip_begins_is_negative() {
    assertThat(clapped(FrameRate.FPS_25).clipFrameAt(CLOCK, 48 - 120 - 24 * 10)).hasValue(-107);
  }

  @Test
  void is_not_known_without_rate_or_clap() {
    Performer.Clap clap = new Performer.Clap(Seconds.ZERO, 0);
    assertThat(appearance(Optional.empty(), Optional.of(clap)).clipFrameAt(CLOCK, 0)).isEmpty();
    assertThat(appearance(Optional.of(FrameRate.FPS_25), Optional.empty()).clipFrameAt(CLOCK, 0))
        .isEmpty();
  }
}

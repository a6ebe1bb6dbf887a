package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.barsheet.timing.PlanBuilder.reveal;

import java.util.List;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Slow;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/** Reveals laid on frames, counted backwards from the frame they land on. */
class RevealOnFramesTest {

  /** At 96 a minute and 24 frames a second a beat has 15 frames. */
  private static MusicBuilder music() {
    return new MusicBuilder().tempo(96).bars(16);
  }

  /** A film whose second panel reveals lamp-1 at frame 100 and ends before frame 240. */
  private static PlanBuilder landingOn100(Reveal... reveals) {
    return new PlanBuilder(music())
        .opening("lamp-1", "small-lamp")
        .opening("lamp-2", "small-lamp")
        .panel("", "")
        .panel("01:00:04:04", "", List.of(reveals))
        .panel("bar 5", "");
  }

  private static FilmSheet sheet(PlanBuilder plan) {
    return ExposurePlanner.complete(plan.time(), List.of());
  }

  private static Exposure shown(PlannedReveal reveal, long frame) {
    return reveal.exposures().stream()
        .filter(exposure -> exposure.frames().contains(frame))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void thirty_pictures_on_twos_land_fully_open() {
    PlannedReveal lamp = sheet(landingOn100(reveal("lamp-1", 30, 2))).reveals().get(0);
    assertThat(lamp.firstGapFrame()).isEqualTo(42);
    assertThat(shown(lamp, 41).picture().number()).isZero();
    assertThat(shown(lamp, 42).picture().name()).isEqualTo("small-lamp 001");
    assertThat(shown(lamp, 99).picture().number()).isEqualTo(29);
    assertThat(shown(lamp, 100).picture().number()).isEqualTo(30);
    assertThat(lamp.exposures().get(0).frames().start()).isEqualTo(30);
    assertThat(lamp.exposures().get(30).frames().endExclusive()).isEqualTo(240);
    assertThat(lamp.squeeze()).isEmpty();
  }

  @Test
  void thirty_pictures_on_twos_land_half_open() {
    Reveal half = reveal("lamp-1", 30, 2, Lands.HALF_OPEN, Slow.NONE);
    PlannedReveal lamp = sheet(landingOn100(half)).reveals().get(0);
    assertThat(lamp.firstGapFrame()).isEqualTo(72);
    assertThat(shown(lamp, 100).picture().number()).isEqualTo(15);
    assertThat(lamp.halfOpenFrame()).isEqualTo(100);
    assertThat(lamp.fullyOpenFrame()).isEqualTo(130);
  }

  @Test
  void a_reveal_can_land_on_its_first_gap() {
    Reveal first = reveal("lamp-1", 30, 2, Lands.FIRST_GAP, Slow.NONE);
    PlannedReveal lamp = sheet(landingOn100(first)).reveals().get(0);
    assertThat(lamp.firstGapFrame()).isEqualTo(100);
    assertThat(lamp.fullyOpenFrame()).isEqualTo(158);
  }
}

package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.barsheet.timing.Reveals.reveal;

import java.util.List;
import java.util.Optional;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Cycle;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Slow;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/** Reveals laid on frames, counted backwards from the frame they land on. */
class RevealOnFramesTest {

  /** At 96 a minute and 24 fps a beat has 15 frames. */
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
    return FilmPlanner.complete(plan.time(), List.of());
  }

  private static Exposure shown(PlannedReveal reveal, long frame) {
    return reveal.exposures().stream()
        .filter(exposure -> exposure.frames().contains(frame))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void thirty_photographs_on_twos_land_fully_open() {
    PlannedReveal lamp = sheet(landingOn100(reveal("lamp-1", 30, 2))).reveals().get(0);
    assertThat(lamp.firstGapFrame()).isEqualTo(42);
    assertThat(shown(lamp, 41).photograph().number()).isZero();
    assertThat(shown(lamp, 42).photograph().name()).isEqualTo("small-lamp 001");
    assertThat(shown(lamp, 99).photograph().number()).isEqualTo(29);
    assertThat(shown(lamp, 100).photograph().number()).isEqualTo(30);
    assertThat(lamp.exposures().get(0).frames().start()).isEqualTo(30);
    assertThat(lamp.exposures().get(30).frames().endExclusive()).isEqualTo(240);
    assertThat(lamp.squeeze()).isEmpty();
  }

  @Test
  void thirty_photographs_on_twos_land_half_open() {
    Reveal half = reveal("lamp-1", 30, 2, Lands.HALF_OPEN, Slow.NONE);
    PlannedReveal lamp = sheet(landingOn100(half)).reveals().get(0);
    assertThat(lamp.firstGapFrame()).isEqualTo(72);
    assertThat(shown(lamp, 100).photograph().number()).isEqualTo(15);
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

  private static Reveal cycling(int photographs, Cycle cycle) {
    Reveal r = reveal("lamp-1", photographs, 2);
    return new Reveal(
        r.opening(),
        r.way(),
        photographs,
        2,
        r.slow(),
        r.evenIn(),
        r.lands(),
        r.landsOn(),
        Optional.of(cycle),
        Reveal.Taken.NOT_YET,
        r.where());
  }

  private static List<Integer> numbers(PlannedReveal reveal, long from, int exposures) {
    return reveal.exposures().stream()
        .filter(exposure -> exposure.frames().start() >= from)
        .limit(exposures)
        .map(exposure -> exposure.photograph().number())
        .toList();
  }

  @Test
  void a_cycle_begins_again_after_the_last_photograph() {
    FilmSheet film = sheet(landingOn100(cycling(30, new Cycle(28, 30, false))));
    PlannedReveal lamp = film.reveals().get(0);
    assertThat(numbers(lamp, 100, 7)).containsExactly(30, 28, 29, 30, 28, 29, 30);
    assertThat(shown(lamp, 239).photograph().number()).isPositive();
    assertThat(film.notes()).anyMatch(note -> note.text().endsWith("fully open, repeat 28 to 30"));
  }

  @Test
  void a_cycle_to_and_fro_shows_neither_end_twice() {
    PlannedReveal lamp = sheet(landingOn100(cycling(30, new Cycle(28, 30, true)))).reveals().get(0);
    assertThat(numbers(lamp, 100, 7)).containsExactly(30, 29, 28, 29, 30, 29, 28);
  }

  @Test
  void a_cycle_of_earlier_photographs_begins_at_its_first() {
    PlannedReveal lamp = sheet(landingOn100(cycling(30, new Cycle(0, 2, false)))).reveals().get(0);
    assertThat(numbers(lamp, 100, 5)).containsExactly(30, 0, 1, 2, 0);
  }

  /** Every photograph is shown to the end of the shot, and none for longer than it is asked. */
  @Test
  void a_cycle_fills_the_shot() {
    PlannedReveal lamp = sheet(landingOn100(cycling(30, new Cycle(5, 30, true)))).reveals().get(0);
    long at = 30;
    for (Exposure exposure : lamp.exposures()) {
      assertThat(exposure.frames().start()).isEqualTo(at);
      assertThat(at < 42 || exposure.frames().length() <= 2).isTrue();
      at = exposure.frames().endExclusive();
    }
    assertThat(at).isEqualTo(240);
  }

  /**
   * Three photographs on twos come again every 6 frames: four times in the second, over the limit.
   */
  @Test
  void a_fast_cycle_is_told_as_flashing() {
    FilmSheet film = sheet(landingOn100(cycling(30, new Cycle(0, 2, false))));
    assertThat(film.reveals().get(0).turns(Reveal.Way.OPENS)).contains(42L, 104L, 110L, 116L);
    assertThat(film.findings())
        .anyMatch(finding -> finding.sentence().contains("three flashes a second (WCAG 2.3.1)"));
  }
}

package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.barsheet.timing.Reveals.reveal;

import java.util.List;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.plan.Slow;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/**
 * How much of a hole is uncovered on each frame: 1 − cos θ of a flap to 90 degrees. The lamp opens
 * in the second shot, lands on frame 100, and closes in the fourth.
 */
class UncoveringTest {

  private static final FilmSheet FILM =
      FilmPlanner.complete(
          new PlanBuilder(new MusicBuilder().tempo(96).bars(16))
              .opening("lamp-1", "small-lamp")
              .opening("lamp-2", "small-lamp")
              .panel("", "")
              .panel(
                  "01:00:04:04", "", List.of(reveal("lamp-1", 30, 2, Lands.FULLY_OPEN, Slow.NONE)))
              .panel("bar 5", "")
              .panel(
                  "bar 9",
                  "",
                  List.of(reveal("lamp-1", Way.CLOSES, 30, 1, Lands.FULLY_OPEN, Slow.NONE)))
              .time(),
          List.of());

  @Test
  void a_hole_is_covered_until_its_flap_moves_and_stays_as_it_was_left() {
    Uncovering lamp = FILM.uncovering("lamp-1");
    assertThat(lamp.at(0)).isZero();
    assertThat(lamp.at(41)).isZero();
    assertThat(lamp.at(100)).isCloseTo(1, within(1e-9));
    assertThat(lamp.at(300)).isCloseTo(1, within(1e-9));
    assertThat(lamp.at(FILM.timing().lengthFrames() - 1)).isZero();
  }

  /**
   * Photograph 10 stands at 30 degrees: 1 − cos 30° = 0.134; photograph 20 at 60 degrees: a half.
   */
  @Test
  void a_flap_at_thirty_degrees_shows_an_eighth_of_its_hole() {
    Uncovering lamp = FILM.uncovering("lamp-1");
    assertThat(lamp.at(60)).isCloseTo(0.134, within(0.0005));
    assertThat(lamp.at(61)).isEqualTo(lamp.at(60));
    assertThat(lamp.at(80)).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void an_opening_that_never_moves_stays_covered() {
    assertThat(FILM.uncovering("lamp-2").at(500)).isZero();
  }
}

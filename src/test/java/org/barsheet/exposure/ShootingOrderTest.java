package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.barsheet.timing.Reveals.reveal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.plan.Slow;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.shooting.Step;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/**
 * Seeded random stories on one artwork: whatever the order of work, paper is never closed again.
 */
class ShootingOrderTest {

  private static final int OPENINGS = 6;

  @Test
  void from_the_top_down_no_flap_closes_and_no_position_is_returned_to() {
    int fresh = 0;
    int outOfStory = 0;
    for (long seed = 1; seed <= 60; seed++) {
      FilmSheet film = FilmPlanner.complete(story(new Random(seed)).time(), List.of());
      List<String> taken = follow(seed, film.shooting());
      List<String> movements = film.movements().stream().map(Movement::name).toList();
      assertThat(taken).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(movements);
      fresh += film.shooting().setups().stream().anyMatch(Setup::closedAgain) ? 1 : 0;
      outOfStory += taken.equals(movements) ? 0 : 1;
    }
    // The stories are hard enough to try the rule: some want fresh paper, some another order.
    assertThat(fresh).isBetween(5, 55);
    assertThat(outOfStory).isGreaterThan(5);
  }

  /** Eight panels; in each one opening of the artwork opens or closes, along one of two curves. */
  private static PlanBuilder story(Random random) {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(40);
    for (int bar = 3; bar <= 33; bar += 2) {
      music.motif("glimmer", bar, 1);
    }
    PlanBuilder plan = new PlanBuilder(music).camera(6000, 4000);
    for (int i = 0; i < OPENINGS; i++) {
      plan.openingAt("door-" + i, "quay", new Rect(1 + 4 * i, 2 + random.nextInt(8), 2, 2));
    }
    plan.panel("", "").field(0, 0, 24);
    for (int panel = 1; panel <= 8; panel++) {
      Way way = random.nextInt(4) == 0 ? Way.CLOSES : Way.OPENS;
      Slow slow = random.nextInt(4) == 0 ? Slow.BOTH : Slow.NONE;
      String door = "door-" + random.nextInt(OPENINGS);
      plan.panel(
              "glimmer " + 2 * panel, "", List.of(reveal(door, way, 8, 2, Lands.FULLY_OPEN, slow)))
          .field(random.nextInt(12), random.nextInt(6), 8 + random.nextInt(4));
    }
    return plan;
  }

  /** Works from the top down as a hand would, and looks at the paper before each photograph. */
  private static List<String> follow(long seed, ShootingPlan shooting) {
    List<String> taken = new ArrayList<>();
    Map<String, Double> paper = new HashMap<>();
    Set<Rect> positions = new HashSet<>();
    for (Setup setup : shooting.setups()) {
      assertThat(positions.add(setup.view().orElseThrow().field())).as("never back").isTrue();
      for (Step step : setup.steps()) {
        step.fresh().forEach(flap -> assertThat(paper.put(flap, 0.0)).as("cut").isPositive());
        step.toOpen().forEach(flap -> open(paper, flap));
        for (Setup.Standing standing : step.take().standing()) {
          assertThat(paper.getOrDefault(standing.opening(), 0.0))
              .as("seed %d: %s beside %s", seed, standing.opening(), step.take().name())
              .isEqualTo(standing.open());
        }
        if (step.take() instanceof Setup.Run run) {
          String opening = run.movement().openings().get(0);
          Double stood = paper.put(opening, 1.0);
          assertThat(stood == null ? 0 : stood).as("seed %d: %s", seed, run.name()).isZero();
          taken.add(run.name());
        }
      }
    }
    return taken;
  }

  private static void open(Map<String, Double> paper, Setup.Standing wanted) {
    Double stood = paper.put(wanted.opening(), wanted.open());
    assertThat(stood == null ? 0 : stood).as(wanted.opening()).isLessThan(wanted.open());
  }
}

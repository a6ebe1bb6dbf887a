package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.barsheet.timing.Reveals.reveal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.plan.Slow;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/**
 * Seeded random stories on one artwork: whatever the order of work, paper is never closed again.
 */
class ShootingOrderTest {

  private static final int OPENINGS = 6;

  @Test
  void on_one_piece_of_paper_nothing_closes_again() {
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

  /** Works through the setups as a hand would, and looks at the paper before each movement. */
  private static List<String> follow(long seed, ShootingPlan shooting) {
    List<String> taken = new ArrayList<>();
    Map<String, Double> paper = new HashMap<>();
    for (Setup setup : shooting.setups()) {
      if (setup.closedAgain()) {
        paper.clear();
      }
      for (Setup.Run run : setup.runs()) {
        String name = run.movement().name();
        for (Setup.Standing standing : run.standing()) {
          assertThat(paper.getOrDefault(standing.opening(), 0.0))
              .as("seed %d: %s beside %s", seed, standing.opening(), name)
              .isLessThanOrEqualTo(standing.open());
          paper.put(standing.opening(), standing.open());
        }
        String opening = run.movement().openings().get(0);
        assertThat(paper.getOrDefault(opening, 0.0)).as("seed %d: %s", seed, name).isZero();
        paper.put(opening, 1.0);
        taken.add(name);
      }
    }
    return taken;
  }
}

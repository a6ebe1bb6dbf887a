package org.barsheet.shooting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.data.Offset.offset;
import static org.barsheet.timing.Reveals.reveal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Shoot;
import org.barsheet.plan.Slow;
import org.barsheet.shooting.Setup.Plate;
import org.barsheet.shooting.Setup.Standing;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/** What is photographed when. The film is 1920 wide and a square of the artwork an inch. */
class ShootingPlanTest {

  private static PlanBuilder plan() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(40);
    for (int bar = 3; bar <= 35; bar += 4) {
      music.motif("glimmer", bar, 1);
    }
    return new PlanBuilder(music)
        .opening("lamp-1", "small-lamp")
        .opening("lamp-2", "small-lamp")
        .openingAt("gate", "quay", new Rect(2, 2, 2, 2))
        .openingAt("hatch", "quay", new Rect(5, 2, 1, 1))
        .openingAt("office", "quay", new Rect(20, 10, 2, 2))
        .panel("", "")
        .field(0, 0, 24);
  }

  private static ShootingPlan shooting(PlanBuilder plan) {
    return FilmPlanner.complete(plan.time(), List.of()).shooting();
  }

  /** The setups in which something moves. */
  private static List<Setup> moving(PlanBuilder plan) {
    return shooting(plan).setups().stream().filter(setup -> !setup.runs().isEmpty()).toList();
  }

  private static Reveal evenly(String opening, int photographs) {
    return reveal(opening, photographs, 2, Lands.FULLY_OPEN, Slow.NONE);
  }

  private static List<List<String>> movements(ShootingPlan shooting) {
    return shooting.setups().stream()
        .map(setup -> setup.runs().stream().map(run -> run.movement().name()).toList())
        .filter(movements -> !movements.isEmpty())
        .toList();
  }

  @Test
  void a_movement_that_two_openings_share_is_taken_once_at_its_longest() {
    ShootingPlan shooting =
        shooting(
            plan()
                .panel("glimmer 1", "", List.of(evenly("lamp-1", 20)))
                .panel("glimmer 3", "", List.of(evenly("lamp-2", 30))));
    assertThat(movements(shooting)).containsExactly(List.of("small-lamp"));
    assertThat(shooting.moved()).isEqualTo(30);
    assertThat(shooting.setups().get(0).runs().get(0).panels()).containsExactly("2", "3");
  }

  @Test
  void every_movement_has_its_plates_and_the_closed_one_is_photograph_0() {
    ShootingPlan shooting = shooting(plan().panel("glimmer 1", "", List.of(evenly("lamp-1", 20))));
    assertThat(shooting.setups().get(0).runs().get(0).plates())
        .containsExactly(
            new Plate(Plate.Kind.CLOSED, "small-lamp 000"),
            new Plate(Plate.Kind.OPEN, "small-lamp open"),
            new Plate(Plate.Kind.CLEAN, "small-lamp clean"));
    assertThat(shooting.setups().get(0).photographs()).isEqualTo(23);
    // The photograph of the artwork at rest is a plate too.
    assertThat(shooting.plates()).isEqualTo(3 + 1);
  }

  @Test
  void a_flap_that_opens_along_a_second_curve_is_cut_afresh() {
    ShootingPlan shooting =
        shooting(
            plan()
                .panel("glimmer 1", "", List.of(evenly("lamp-1", 20)))
                .panel("glimmer 3", "", List.of(reveal("lamp-2", 20, 2))));
    assertThat(movements(shooting).get(0)).hasSize(2);
    assertThat(shooting.setups().get(0).steps())
        .extracting(Step::fresh)
        .containsExactly(List.of(), List.of("lamp-1"));
  }

  /** In panel 2 the hatch stands open beside the moving gate only if it opened before. */
  @Test
  void openings_of_the_artwork_are_taken_so_that_none_has_to_close() {
    ShootingPlan shooting =
        shooting(
            plan()
                .panel("glimmer 1", "", List.of(evenly("hatch", 10)))
                .field(0, 0, 8)
                .panel("glimmer 3", "", List.of(evenly("gate", 10)))
                .field(0, 0, 8));
    assertThat(movements(shooting)).containsExactly(List.of("hatch", "gate"));
    Setup setup = shooting.setups().get(1);
    assertThat(setup.runs().get(1).standing()).containsExactly(new Standing("hatch", 1));
    assertThat(setup.runs().get(0).standing()).containsExactly(new Standing("gate", 0));
  }

  @Test
  void each_card_of_a_setup_has_a_label_of_its_own() {
    ShootingPlan shooting =
        shooting(
            plan()
                .panel("glimmer 1", "", List.of(evenly("hatch", 10), evenly("gate", 12)))
                .field(0, 0, 8));
    Setup together = shooting.setups().get(1);
    assertThat(together.runs()).extracting(together::label).containsExactly("2a", "2b");
    Setup alone =
        shooting(plan().panel("glimmer 1", "", List.of(evenly("lamp-1", 20)))).setups().get(0);
    assertThat(alone.label(alone.runs().get(0))).isEqualTo("1");
    assertThat(alone.runs().get(0).hours()).isEmpty();
  }

  @Test
  void two_openings_that_move_in_one_shot_do_not_bind_each_other() {
    ShootingPlan shooting =
        shooting(
            plan()
                .panel("glimmer 1", "", List.of(evenly("hatch", 10), evenly("gate", 12)))
                .field(0, 0, 8));
    assertThat(movements(shooting)).containsExactly(List.of("hatch", "gate"));
    assertThat(shooting.setups()).noneMatch(Setup::closedAgain);
  }

  /** Both fields together are 16 squares wide; at a headroom of 3.125 a field of 5.12 is sharp. */
  @Test
  void one_view_serves_several_panels_while_the_camera_has_pixels_to_spare() {
    PlanBuilder plan =
        plan()
            .panel("glimmer 1", "", List.of(evenly("hatch", 10)))
            .field(4, 1, 6)
            .panel("glimmer 3", "", List.of(evenly("office", 10)))
            .field(14, 4, 6);
    assertThat(moving(plan)).hasSize(2);
    Setup together = moving(plan.camera(6000, 4000)).get(0);
    assertThat(together.runs()).hasSize(2);
    CameraView view = together.view().orElseThrow();
    assertThat(view.field().width()).isEqualTo(16);
    assertThat(view.enlargement().orElseThrow()).isCloseTo(16 / 6.0 / 3.125, offset(1e-12));
    assertThat(moving(plan.camera(3840, 2160))).hasSize(2);
  }

  /** Two lamps of one model, 5 squares apart: what is seen about each must fit about the first. */
  @Test
  void a_view_of_a_shared_model_holds_what_every_panel_sees_about_its_own_opening() {
    PlanBuilder plan =
        plan()
            .openingAt("bow", "small-lamp", new Rect(2, 2, 2, 2))
            .openingAt("stern", "small-lamp", new Rect(7, 2, 2, 2))
            .panel("glimmer 1", "", List.of(evenly("bow", 10)))
            .field(1, 1, 8)
            .panel("glimmer 3", "", List.of(evenly("stern", 10)))
            .field(4, 1, 8);
    Setup setup = shooting(plan).setups().get(0);
    Rect seen = setup.view().orElseThrow().field();
    assertThat(setup.runs()).hasSize(1);
    assertThat(seen.left()).as("4 about the stern is -1 about the bow").isEqualTo(-1);
    assertThat(seen.left() + seen.width()).isEqualTo(9);
  }

  @Test
  void a_view_of_several_panels_stays_on_the_paper_where_it_can() {
    PlanBuilder plan =
        plan()
            .camera(6000, 4000)
            .panel("glimmer 1", "", List.of(evenly("hatch", 10)))
            .field(0, 1, 6)
            .panel("glimmer 3", "", List.of(evenly("office", 10)))
            .field(6, 5, 6);
    Rect seen = moving(plan).get(0).view().orElseThrow().field();
    assertThat(seen.left()).isZero();
    assertThat(seen.width()).isGreaterThan(12);
  }

  /** The thin lens: 50 mm, 36 mm sensor, a field of 609.6 mm is seen from 896.7 mm. */
  @Test
  void the_distance_is_that_of_a_thin_lens_at_the_models_size() {
    PlanBuilder plan =
        plan()
            .camera(6000, 4000)
            .panel("glimmer 1", "", List.of(evenly("lamp-1", 10)))
            .field(2, 6, 8);
    CameraView view = shooting(plan).setups().get(0).view().orElseThrow();
    assertThat(view.millimetersWide()).isCloseTo(609.6, offset(1e-9));
    assertThat(view.distanceMillimeters().orElseThrow()).isCloseTo(896.7, offset(0.05));
  }

  /** 22 photographs at 22 an hour and 60 minutes to set up fill a day of two hours exactly. */
  @Test
  void hours_come_from_the_directors_own_rates_and_fill_days_to_the_minute() {
    PlanBuilder plan =
        plan()
            .panel("glimmer 1", "", List.of(evenly("lamp-1", 19)))
            .panel("glimmer 3", "", List.of(reveal("lamp-2", 20, 2)))
            .shoot(new Shoot(22, 60, Optional.empty(), Optional.empty()));
    assertThat(shooting(plan).time().orElseThrow().firstDay()).isEqualTo(OptionalInt.empty());
    LocalDate monday = LocalDate.of(2026, 3, 2);
    ShootingPlan dated =
        shooting(plan.shoot(new Shoot(22, 60, Optional.of(monday), Optional.of(2.0))));
    assertThat(dated.setups().get(0).time())
        .contains(
            new WorkTime(
                3,
                OptionalInt.of(1),
                OptionalInt.of(2),
                Optional.of(monday),
                Optional.of(monday.plusDays(1))));
    // The artwork at rest: one more setup, which fills the second day, and two photographs.
    assertThat(dated.days()).extracting(WorkDay::name).containsExactly("day 1", "day 2", "day 3");
    assertThat(dated.days().get(1).stretches())
        .extracting(one -> one.begins().getAsDouble(), one -> one.ends().getAsDouble())
        .containsExactly(tuple(0.0, 1.0), tuple(1.0, 2.0));
    assertThat(dated.days().get(2).taken())
        .containsExactly("artwork as in panel 1", "artwork as in panel 3");
    assertThat(dated.time().orElseThrow().hours()).isCloseTo(4 + 2 / 22.0, offset(1e-12));
    assertThat(dated.time().orElseThrow().ends()).contains(monday.plusDays(2));
  }

  @Test
  void no_hours_are_assumed_where_no_rates_are_given() {
    ShootingPlan shooting = shooting(plan().panel("glimmer 1", "", List.of(evenly("lamp-1", 20))));
    assertThat(shooting.time()).isEmpty();
    assertThat(shooting.setups().get(0).time()).isEmpty();
  }

  /** 50 mm lens, 36 mm sensor: a field of 152.4 mm is seen from 261.7 mm; the flap is 304.8 mm. */
  @Test
  void a_flap_as_high_as_the_lens_is_told() {
    FilmSheet film =
        FilmPlanner.complete(
            plan()
                .camera(6000, 4000)
                .openingAt("gate-2", "quay", new Rect(0, 0, 12, 2))
                .panel("glimmer 1", "", List.of(evenly("gate-2", 20)))
                .field(0, 0, 6)
                .time(),
            List.of());
    assertThat(film.findings())
        .anyMatch(
            f -> f.sentence().equals("gate-2 comes up 305 mm, and the lens is about 262 mm away"));
  }

  /** Panels 1, 2 and 4 move nothing of the artwork; in 4 the gate that panel 3 opened is seen. */
  @Test
  void panels_in_which_the_artwork_is_at_rest_share_a_photograph_of_it_while_they_can() {
    ShootingPlan shooting =
        shooting(
            plan()
                .panel("glimmer 1", "", List.of(evenly("lamp-1", 20)))
                .field(0, 4, 10)
                .panel("glimmer 3", "", List.of(evenly("gate", 20)))
                .field(0, 0, 8)
                .panel("bar 30", "")
                .field(0, 0, 8));
    assertThat(shooting.atRest())
        .extracting(ArtworkPlate::panels)
        .containsExactly(List.of("1", "2"), List.of("4"));
    assertThat(shooting.atRest().get(0).open()).isEmpty();
    assertThat(shooting.atRest().get(1).open()).containsExactly(new Standing("gate", 1));
    int moved =
        shooting.setups().stream()
            .flatMap(one -> one.runs().stream())
            .mapToInt(Setup.Run::photographs)
            .sum();
    assertThat(shooting.photographs()).isEqualTo(moved + 2);
  }

  private static List<String> takes(Setup setup) {
    return setup.steps().stream().map(step -> step.take().name()).toList();
  }

  /** The camera sees the whole artwork in all of them, so one setup holds plates and movement. */
  @Test
  void a_photograph_at_rest_stands_in_the_list_when_it_must_be_taken() {
    ShootingPlan shooting =
        shooting(
            plan()
                .panel("bar 10", "")
                .field(0, 0, 24)
                .panel("glimmer 3", "", List.of(evenly("gate", 20)))
                .field(0, 0, 24)
                .panel("bar 30", "")
                .field(0, 0, 24));
    assertThat(shooting.setups()).hasSize(1);
    Setup setup = shooting.setups().get(0);
    assertThat(takes(setup))
        .containsExactly("artwork as in panel 1", "gate", "artwork as in panel 4");
    assertThat(setup.steps())
        .extracting(step -> setup.label(step.take()))
        .containsExactly("1a", "1b", "1c");
  }

  /** The gate is seen closed and open from afar, and moves from near: two positions, one flap. */
  @Test
  void a_flap_is_cut_afresh_rather_than_the_camera_taken_back() {
    ShootingPlan shooting =
        shooting(
            plan()
                .panel("glimmer 3", "", List.of(evenly("gate", 20)))
                .field(0, 0, 6)
                .panel("bar 30", "")
                .field(0, 0, 24));
    assertThat(shooting.setups())
        .extracting(Setup::name)
        .containsExactly("artwork at rest", "gate");
    assertThat(shooting.setups().get(1).openBefore()).containsExactly("gate");
    Step open = shooting.setups().get(0).steps().get(1);
    assertThat(open.toOpen()).containsExactly(new Standing("gate", 1));
  }

  /** The third photograph of a hand that sets whole degrees only moves nothing. */
  @Test
  void a_photograph_that_looks_like_the_one_before_is_no_work() {
    ShootingPlan shooting =
        shooting(plan().panel("glimmer 1", "", List.of(reveal("lamp-1", 400, 1))));
    Setup.Run run = shooting.setups().get(0).runs().get(0);
    long still = run.movement().moved().stream().filter(one -> one.isLikeBefore()).count();
    assertThat(still).isPositive();
    assertThat(run.moved()).isEqualTo(400 - (int) still);
    assertThat(run.taken()).hasSize(run.photographs()).doesNotHaveDuplicates();
    assertThat(run.taken().get(0)).isEqualTo("small-lamp 000");
  }

  /** 24 squares for the whole, 6 in the narrowest panel, 3.125 pixels to one: 1.28 times. */
  @Test
  void a_plate_that_a_narrow_panel_blows_up_says_so() {
    ShootingPlan shooting = shooting(plan().camera(6000, 4000).panel("bar 10", "").field(9, 3, 6));
    assertThat(shooting.atRest().get(0).enlargement().orElseThrow()).isCloseTo(1.28, offset(1e-9));
  }
}

package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.barsheet.timing.Reveals.on;
import static org.barsheet.timing.Reveals.reveal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmPlanner;
import org.barsheet.plan.Field;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Place;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.plan.Slow;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/**
 * What is found about photographs: their backing, sameness, framing and flashing. A bar has 60
 * frames.
 */
class PhotographFindingsTest {

  private static PlanBuilder plan() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(40);
    for (int bar = 3; bar <= 35; bar += 2) {
      music.motif("glimmer", bar, 1);
    }
    return new PlanBuilder(music)
        .opening("lamp-1", "small-lamp")
        .opening("lamp-2", "small-lamp")
        .opening("lamp-3", "small-lamp", new Opening.Hinged(Side.RIGHT, 90))
        .openingAt("gate", "quay", new Rect(10, 5, 2, 2))
        .panel("", "");
  }

  private static List<Finding> findings(PlanBuilder plan) {
    return FilmPlanner.complete(plan.time(), List.of()).findings();
  }

  private static List<String> told(PlanBuilder plan, Severity severity) {
    return findings(plan).stream()
        .filter(finding -> finding.severity() == severity)
        .map(Finding::sentence)
        .toList();
  }

  private static Reveal evenly(String opening, int photographs) {
    return reveal(opening, photographs, 2, Lands.FULLY_OPEN, Slow.NONE);
  }

  @Test
  void a_backing_near_the_palette_is_told_with_a_better_one() {
    PlanBuilder plan = plan().palette("0A9646", "C8963C").panel("glimmer 1", "");
    Finding near =
        findings(plan).stream()
            .filter(finding -> finding.sentence().startsWith("the backing of small-lamp"))
            .findFirst()
            .orElseThrow();
    assertThat(near.severity()).isEqualTo(Severity.WARNING);
    assertThat(near.sentence()).contains("dark green");
    assertThat(near.remedy()).startsWith("back it with ");
  }

  @Test
  void clothes_near_the_backing_of_the_opening_are_told() {
    PlanBuilder plan =
        plan()
            .performer("celesta", "Celesta")
            .panel("glimmer 2", "", List.of(evenly("lamp-1", 20)))
            .appears("celesta", "lamp-1");
    assertThat(told(plan, Severity.WARNING)).noneMatch(words -> words.contains("clothes"));
    plan.performersWith(PhotographFindingsTest::inGreen);
    assertThat(told(plan, Severity.WARNING))
        .anyMatch(words -> words.equals("celesta's dark green clothes may key out in lamp-1"));
  }

  private static Performer inGreen(Performer p) {
    return new Performer(
        p.name(),
        p.part(),
        p.clip(),
        p.clipRate(),
        p.clap(),
        p.clipStart(),
        p.clipWidth(),
        p.clipHeight(),
        List.of("0A9646"),
        p.behind(),
        p.where());
  }

  /** Glimmer comes every 2 bars, 120 frames: 5 s at 24 fps. */
  @Test
  void the_same_photographs_for_another_opening_soon_after_are_told() {
    PlanBuilder soon =
        plan()
            .panel("glimmer 2", "", List.of(evenly("lamp-1", 20)))
            .panel("glimmer 3", "", List.of(evenly("lamp-2", 20)));
    assertThat(told(soon, Severity.REMARK))
        .contains("lamp-2 repeats lamp-1's photographs after 5 s");
    PlanBuilder later =
        plan()
            .panel("glimmer 2", "", List.of(evenly("lamp-1", 20)))
            .panel("glimmer 8", "", List.of(evenly("lamp-2", 20)));
    assertThat(told(later, Severity.REMARK))
        .noneMatch(words -> words.contains("shows the photographs"));
  }

  @Test
  void a_movement_that_is_another_in_a_mirror_is_told_with_what_it_saves() {
    PlanBuilder plan =
        plan()
            .panel("glimmer 2", "", List.of(evenly("lamp-1", 20)))
            .panel("glimmer 4", "", List.of(evenly("lamp-3", 20)));
    assertThat(told(plan, Severity.REMARK))
        .contains(
            "lamp-3 mirrors lamp-1: flipping its photographs left to right would save 20"
                + " photographs");
    PlanBuilder slower =
        plan()
            .panel("glimmer 2", "", List.of(evenly("lamp-1", 20)))
            .panel("glimmer 4", "", List.of(reveal("lamp-3", 20, 2)));
    assertThat(told(slower, Severity.REMARK)).noneMatch(words -> words.contains("mirror"));
  }

  /** The gate is 2 squares wide; the field ends in its middle. */
  @Test
  void a_reveal_that_the_photograph_cuts_off_is_told() {
    PlanBuilder cut = plan().panel("glimmer 2", "", List.of(evenly("gate", 20))).field(3, 3, 8);
    assertThat(told(cut, Severity.REMARK))
        .contains("the frame cuts off part of gate as it moves: 50 % is seen");
    PlanBuilder outside = plan().panel("glimmer 2", "", List.of(evenly("gate", 20))).field(0, 0, 8);
    assertThat(told(outside, Severity.WARNING)).contains("gate moves outside the frame");
  }

  /** A push-in that loses the gate on the way: the worst frame of the movement counts. */
  @Test
  void a_moving_camera_is_followed_frame_by_frame() {
    Field pushIn = new Field(new Rect(0, 0, 24, 13.5), new Rect(20, 11, 4, 2.25), Slow.NONE);
    PlanBuilder plan =
        plan()
            .panel("glimmer 2", "", List.of(evenly("gate", 20)))
            .field(pushIn)
            .panel("glimmer 3", "");
    assertThat(told(plan, Severity.WARNING)).contains("gate goes out of the frame as it moves");
  }

  /** Two squares of 24 across 1080 lines are 160 pixels; of 90 they are 43, under a twentieth. */
  @Test
  void an_opening_hard_to_see_is_told() {
    PlanBuilder plan =
        plan()
            .panel("glimmer 2", "", List.of(evenly("gate", 20)))
            .field(new Field(new Rect(0, 0, 90, 50.625), new Rect(0, 0, 90, 50.625), Slow.NONE));
    assertThat(told(plan, Severity.REMARK))
        .contains("gate is only 43 pixels across as it moves: hard to see");
  }

  /** 3840 pixels are two to one of the film's: no field narrower than half the view stays sharp. */
  @Test
  void a_panel_that_blows_the_photograph_up_is_told() {
    PlanBuilder plan =
        plan()
            .camera(3840, 2160)
            .panel("glimmer 2", "", List.of(evenly("lamp-1", 20)))
            .field(0, 4, 16)
            .panel("glimmer 8", "", List.of(evenly("lamp-2", 20)))
            .field(2, 6, 6);
    assertThat(told(plan, Severity.WARNING))
        .contains(
            "setup 1, small-lamp: its narrowest panel enlarges the camera's photograph to 133 %");
  }

  /** A flap of 152.4 mm under a camera 896.7 mm away: 896.7/744.3 is 1.205. */
  @Test
  void a_flap_that_looms_is_told() {
    PlanBuilder plan =
        plan()
            .camera(6000, 4000)
            .panel("glimmer 2", "", List.of(evenly("lamp-1", 20)))
            .field(2, 6, 8);
    assertThat(told(plan, Severity.REMARK))
        .contains(
            "when fully raised, small-lamp's edge looks 20 % larger than its hinge (estimate)");
  }

  /** Four openings of a photograph each within a second, in one shot. */
  @Test
  void openings_of_the_whole_film_are_counted_together_for_flashes() {
    PlanBuilder plan =
        plan()
            .openingAt("hatch", "quay", new Rect(1, 1, 1, 1))
            .panel(
                "glimmer 4",
                "",
                List.of(
                    at("lamp-1", "bar 9"),
                    at("lamp-3", "bar 9 beat 1.5"),
                    at("gate", "bar 9 beat 2"),
                    at("hatch", "bar 9 beat 2.5")))
            .field(0, 0, 24);
    Finding flash =
        findings(plan).stream()
            .filter(finding -> finding.sentence().contains("WCAG"))
            .findFirst()
            .orElseThrow();
    // 8 + 8 + 4 + 1 of 324 squares are 6.5 % of the frame, more than the 2.8 % of WCAG.
    assertThat(flash.severity()).isEqualTo(Severity.WARNING);
    assertThat(flash.sentence())
        .startsWith("4 openings in 23 frames, 4 in less than a second")
        .contains("6.5 % of the frame, more than the 2.8 %");
    assertThat(flash.remedy()).contains("tested");
  }

  /** Bar 9 is on frame 480: it opens, closes, opens and closes again, 4 frames apart. */
  @Test
  void every_movement_of_one_opening_in_a_shot_is_counted_for_flashes() {
    List<Reveal> again = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      int frame = 4 * i;
      String place = String.format(Locale.ROOT, "01:00:%02d:%02d", 20 + frame / 24, frame % 24);
      again.add(at("lamp-1", place, i % 2 == 0 ? Way.OPENS : Way.CLOSES));
    }
    PlanBuilder plan = plan().panel("glimmer 4", "", again).field(0, 0, 24);
    assertThat(told(plan, Severity.REMARK))
        .anyMatch(told -> told.startsWith("4 openings and 4 closings in 28"));
  }

  private static Reveal at(String opening, String place) {
    return at(opening, place, Way.OPENS);
  }

  private static Reveal at(String opening, String place, Way way) {
    Reveal one = reveal(opening, way, 1, 2, Lands.FULLY_OPEN, Slow.NONE);
    return on(new Reveal.OnPlace(Place.parse(place, FrameRate.FPS_24)), one);
  }

  @Test
  void a_calm_film_is_told_how_near_the_limit_it_comes() {
    PlanBuilder plan =
        plan()
            .panel("glimmer 2", "", List.of(evenly("lamp-1", 20), evenly("gate", 20)))
            .field(0, 0, 24);
    assertThat(told(plan, Severity.REMARK))
        .anyMatch(w -> w.startsWith("no second has more than 2"));
  }
}

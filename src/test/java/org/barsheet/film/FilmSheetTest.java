package org.barsheet.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.barsheet.timing.Reveals.on;
import static org.barsheet.timing.Reveals.reveal;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.plan.Slow;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/** What a timing sheet is completed with. A bar has 60 frames, a beat 15. */
class FilmSheetTest {

  private static MusicBuilder music() {
    return new MusicBuilder()
        .tempo(96)
        .bars(24)
        .motif("glimmer", 3, 1)
        .motif("glimmer", 7, 1)
        .motif("glimmer", 11, 1)
        .note(0, 72, 7, 1, 4)
        .note(1, 48, 20, 1, 4);
  }

  private static PlanBuilder plan() {
    return new PlanBuilder(music())
        .opening("lamp-1", "small-lamp")
        .opening("lamp-2", "small-lamp")
        .opening("gate", "quay")
        .panel("", "");
  }

  private static FilmSheet sheet(PlanBuilder plan) {
    return FilmPlanner.complete(plan.time(), List.of());
  }

  private static Reveal closes(String opening, int photographs, Slow slow) {
    return reveal(opening, Way.CLOSES, photographs, 2, Lands.FULLY_OPEN, slow);
  }

  private static List<String> told(FilmSheet film, Severity severity) {
    return film.findings().stream()
        .filter(finding -> finding.severity() == severity)
        .map(Finding::sentence)
        .toList();
  }

  @Test
  void two_reveals_that_overlap_stand_on_two_layers() {
    FilmSheet film =
        sheet(
            plan()
                .panel("glimmer 2", "", List.of(reveal("lamp-1", 30, 2), reveal("lamp-2", 20, 2))));
    assertThat(film.reveals()).extracting(PlannedReveal::layer).containsExactly(1, 2);
  }

  @Test
  void an_opening_that_opens_and_closes_in_one_shot_stays_on_one_layer() {
    Reveal closing =
        on(
            new Reveal.OnPlace(Place.parse("bar 10", FrameRate.FPS_24)),
            closes("lamp-1", 20, Slow.NONE));
    FilmSheet film =
        sheet(
            plan()
                .panel(
                    "glimmer 2",
                    "",
                    List.of(reveal("lamp-1", 20, 2, Lands.FULLY_OPEN, Slow.NONE), closing)));
    assertThat(film.reveals()).extracting(PlannedReveal::layer).containsExactly(1, 1);
    PlannedReveal opens = film.reveals().get(0);
    PlannedReveal closes = film.reveals().get(1);
    assertThat(closes.firstGapFrame()).isEqualTo(540 - 19 * 2);
    assertThat(last(opens).frames().endExclusive()).isEqualTo(closes.firstGapFrame());
    assertThat(closes.exposures().get(0).photograph().name()).isEqualTo("small-lamp 019");
    assertThat(last(closes).photograph().name()).isEqualTo("small-lamp 000");
    assertThat(told(film, Severity.ERROR)).isEmpty();
  }

  private static Exposure last(PlannedReveal reveal) {
    return reveal.exposures().get(reveal.exposures().size() - 1);
  }

  @Test
  void a_closing_shows_the_photographs_of_the_opening_backwards_if_their_curves_mirror() {
    FilmSheet shared = openThenClose(Slow.START);
    assertThat(shared.movements()).hasSize(1);
    assertThat(shared.states())
        .filteredOn(state -> state.opening().equals("lamp-1"))
        .extracting(OpeningState::atLastFrame)
        .containsExactly(0.0, 1.0, 0.0);
    FilmSheet apart = openThenClose(Slow.END);
    assertThat(apart.movements()).hasSize(2);
    assertThat(told(apart, Severity.REMARK))
        .contains("lamp-1 closes on a different curve than it opens: 20 more photographs to take");
  }

  private static FilmSheet openThenClose(Slow closing) {
    return sheet(
        plan()
            .panel("glimmer 1", "", List.of(reveal("lamp-1", 20, 2)))
            .panel("glimmer 3", "", List.of(closes("lamp-1", 20, closing))));
  }

  @Test
  void a_reveal_that_follows_the_notes_has_a_key_on_each() {
    Reveal notes = on(new Reveal.OnNotes(), reveal("lamp-1", 20, 2, Lands.FULLY_OPEN, Slow.NONE));
    PlannedReveal lamp = sheet(plan().panel("glimmer 2", "", List.of(notes))).reveals().get(0);
    // Five notes a beat apart from bar 7, frame 360: photographs 4, 8, 12, 16 and 20.
    assertThat(
            LongStream.of(360, 375, 390, 405, 420)
                .mapToObj(frame -> shown(lamp, frame).photograph().number()))
        .containsExactly(4, 8, 12, 16, 20);
    // Four photographs fill the 15 frames between two notes, 3.75 each, on the nearest frames.
    assertThat(LongStream.of(360, 364, 368, 372).map(f -> shown(lamp, f).frames().length()))
        .containsExactly(4L, 4L, 3L, 4L);
    assertThat(lamp.firstGapFrame()).isEqualTo(360 - 3 * 2);
    assertThat(lamp.squeeze()).isEmpty();
  }

  private static Exposure shown(PlannedReveal reveal, long frame) {
    return reveal.exposures().stream()
        .filter(exposure -> exposure.frames().contains(frame))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_reveal_is_squeezed_to_ones_first_and_then_to_fewer_photographs() {
    // From the cut on bar 3, frame 120, to the accent on frame 180 there are 60 frames.
    assertThat(squeezed(31)).isEqualTo("as asked");
    assertThat(squeezed(32)).isEqualTo("on ones instead of twos");
    assertThat(squeezed(90)).isEqualTo("61 of 90 photographs, on ones");
  }

  @Test
  void the_composer_is_told_what_would_let_a_reveal_be_shown_on_twos() {
    // 40 photographs on twos go 78 frames before the landing, and 60 frames are there.
    assertThat(squeezedFilm(40).findings())
        .extracting(Finding::concerns, Finding::sentence)
        .contains(tuple(Concerns.COMPOSER, "lamp-1 needs 18 more frames (0.3 bar) to run on twos"));
    assertThat(squeezedFilm(90).findings())
        .extracting(Finding::sentence)
        .noneMatch(sentence -> sentence.contains("to run on twos"));
  }

  @Test
  void who_must_mend_a_squeeze_is_told_what_helps_and_what_was_asked() {
    FilmSheet film = squeezedFilm(40);
    assertThat(film.findings())
        .filteredOn(finding -> finding.sentence().startsWith("lamp-1 runs on ones"))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.sentence()).contains("; at worst 67.5° off the plan");
              assertThat(finding.remedy()).isEqualTo("cut earlier, or ask for fewer photographs");
            });
  }

  @Test
  void a_squeezed_reveal_that_begins_on_a_moved_photograph_still_opens_what_was_closed() {
    FilmSheet film = squeezedFilm(90);
    assertThat(film.reveals().get(0).exposures().get(0).progress()).isPositive();
    assertThat(told(film, Severity.ERROR)).isEmpty();
  }

  private static FilmSheet squeezedFilm(int photographs) {
    return sheet(
        plan()
            .panel("glimmer 1", "", List.of(reveal("lamp-1", photographs, 2)))
            .cut(new Panel.OnCue()));
  }

  private static String squeezed(int photographs) {
    FilmSheet film = squeezedFilm(photographs);
    return film.reveals().get(0).squeeze().map(PlannedReveal.Squeeze::sentence).orElse("as asked");
  }

  @Test
  void a_shorter_reveal_of_the_same_movement_shows_some_of_its_photographs() {
    FilmSheet film =
        sheet(
            plan()
                .panel(
                    "glimmer 1", "", List.of(reveal("lamp-1", 30, 2, Lands.FULLY_OPEN, Slow.NONE)))
                .panel(
                    "glimmer 3",
                    "",
                    List.of(reveal("lamp-2", 20, 2, Lands.FULLY_OPEN, Slow.NONE))));
    assertThat(film.movements()).extracting(Movement::name).containsExactly("small-lamp");
    assertThat(film.movements().get(0).openings()).containsExactly("lamp-1", "lamp-2");
    assertThat(film.reveals().get(1).exposures().stream().map(e -> e.photograph().number()))
        .containsExactly(
            0, 2, 3, 5, 6, 8, 9, 11, 12, 14, 15, 17, 18, 20, 21, 23, 24, 26, 27, 29, 30);
  }

  @Test
  void openings_of_the_artwork_itself_have_photographs_of_their_own() {
    FilmSheet film =
        sheet(
            plan()
                .panel("glimmer 1", "", List.of(reveal("gate", 12, 2)))
                .panel("glimmer 3", "", List.of(reveal("lamp-1", 12, 2))));
    assertThat(film.movements()).extracting(Movement::name).containsExactly("gate", "small-lamp");
  }

  @Test
  void the_photograph_lead_moves_the_landing_and_not_the_cut() {
    PlanBuilder plan = plan().panel("glimmer 2", "", List.of(reveal("lamp-1", 30, 2)));
    long cut = sheet(plan).timing().shots().get(1).frames().start();
    FilmSheet led = sheet(plan.lead(3));
    assertThat(led.timing().shots().get(1).frames().start()).isEqualTo(cut);
    assertThat(led.reveals().get(0).accentFrame()).isEqualTo(420);
    assertThat(led.reveals().get(0).landsFrame()).isEqualTo(417);
  }

  @Test
  void a_reveal_of_an_opening_that_stands_open_is_an_error() {
    FilmSheet film =
        sheet(
            plan()
                .panel("glimmer 1", "", List.of(reveal("lamp-1", 20, 2)))
                .panel("glimmer 3", "", List.of(reveal("lamp-1", 20, 2))));
    assertThat(told(film, Severity.ERROR))
        .containsExactly("lamp-1 has been open since panel 2, and starts closed here");
  }

  @Test
  void a_performer_is_seen_from_the_first_gap_and_heard_for_a_share_of_it() {
    FilmSheet film =
        sheet(
            plan()
                .performer("celesta", "Celesta")
                .panel("glimmer 2", "", List.of(reveal("lamp-1", 30, 2)))
                .appears("celesta", "lamp-1")
                .panel("bar 11", ""));
    Appearance seen = film.appearances().get(0);
    // From the first gap, 420 − 58, to bar 11; the part sounds from there to the end of bar 7.
    assertThat(seen.frames().start()).isEqualTo(362);
    assertThat(seen.frames().endExclusive()).isEqualTo(600);
    assertThat(seen.sounding()).isEqualTo(58.0 / 238);
  }

  @Test
  void a_performer_who_is_silent_or_behind_a_closed_opening_is_told() {
    FilmSheet film =
        sheet(
            plan()
                .performer("cello", "Cello")
                .performer("celesta", "Celesta")
                .panel("glimmer 2", "", List.of(reveal("lamp-1", 30, 2)))
                .appears("cello", "lamp-1")
                .panel("bar 11", "")
                .appears("celesta", "gate"));
    assertThat(told(film, Severity.WARNING)).contains("cello is on screen while the part rests");
    assertThat(told(film, Severity.ERROR))
        .containsExactly("celesta is due to appear in gate, but it stays closed in this shot");
  }

  @Test
  void findings_come_worst_first() {
    FilmSheet film =
        sheet(
            plan()
                .panel("glimmer 1", "", List.of(reveal("lamp-1", 90, 2)))
                .cut(new Panel.OnCue())
                .panel("glimmer 3", "", List.of(reveal("lamp-1", 20, 2))));
    assertThat(film.findings())
        .extracting(Finding::severity)
        .isSortedAccordingTo((a, b) -> b.compareTo(a))
        .contains(Severity.ERROR, Severity.WARNING, Severity.REMARK);
  }

  /**
   * The flap is 152.4 mm: 30 even photographs step by 2 · 152.4 · sin 1.5° = 8.0 mm, two by 16.0.
   */
  @Test
  void a_reveal_that_skips_photographs_is_told_where_it_jumps_over_the_plans_limit() {
    FilmSheet film =
        sheet(
            plan()
                .hand(new Hand(0.5, 0.5, 1, Optional.of(10.0)))
                .panel("glimmer 1", "", List.of(evenly("lamp-1", 30)))
                .panel("glimmer 3", "", List.of(evenly("lamp-2", 20))));
    assertThat(told(film, Severity.WARNING))
        .contains(
            "lamp-2 shows only some of its photographs and jumps 16.0 mm from small-lamp 000 to"
                + " small-lamp 002; its limit is 10.0 mm")
        .noneMatch(sentence -> sentence.startsWith("lamp-1 shows"));
  }

  private static Reveal evenly(String opening, int photographs) {
    return reveal(opening, photographs, 2, Lands.FULLY_OPEN, Slow.NONE);
  }
}

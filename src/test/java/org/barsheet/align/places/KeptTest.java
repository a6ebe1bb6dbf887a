package org.barsheet.align.places;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.input.InputException;
import org.barsheet.timing.Finding;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.barsheet.timing.Reveals;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Test;

/** Locked panels and photographed reveals never move. A bar has 60 frames, a beat 15. */
class KeptTest {

  private static PlanBuilder plan(int tempo, String cue, int photographs) {
    return plan(tempo, "", cue, photographs);
  }

  private static PlanBuilder plan(int tempo, String firstLength, String cue, int photographs) {
    MusicBuilder music =
        new MusicBuilder()
            .tempo(tempo)
            .bars(16)
            .motif("glimmer", 7, 1)
            .motif("glimmer", 9, 1)
            .motif("glimmer", 11, 1);
    return new PlanBuilder(music)
        .opening("lamp-1", "small-lamp")
        .panel("", firstLength)
        .panel(cue, "", List.of(Reveals.reveal("lamp-1", photographs, 2)));
  }

  private static String told(PlanBuilder plan) {
    return catchThrowableOfType(InputException.class, plan::time).problems().get(0).toString();
  }

  @Test
  void a_photographed_reveal_stays_where_it_lands_though_another_return_suits_as_well() {
    // Every return lands on its last note, a bar after its first: glimmer 3 on frame 11 x 60.
    TimingSheet free = plan(96, "glimmer", 20).panel("bar 14", "").time();
    assertThat(free.shots().get(1).reveals().get(0).room().landsFrame()).isNotEqualTo(660);
    TimingSheet kept = plan(96, "glimmer", 20).photographed(622, 660).panel("bar 14", "").time();
    assertThat(kept.shots().get(1).reveals().get(0).room().landsFrame()).isEqualTo(660);
  }

  @Test
  void a_photographed_reveal_is_shown_as_it_was_though_there_is_room_for_more() {
    // 20 photographs on ones go before the landing for 19 frames.
    TimingSheet kept = plan(96, "glimmer 3", 20).photographed(641, 660).time();
    assertThat(kept.shots().get(1).reveals().get(0).way().framesPerPhotograph()).isEqualTo(1);
  }

  @Test
  void music_that_moved_under_a_photographed_reveal_is_an_error_that_names_it() {
    assertThat(told(plan(90, "glimmer 3", 20).photographed(622, 660)))
        .isEqualTo(
            """
            quay.yaml, reveals: lamp-1 in panel 2 was photographed to land on frame 660, but would now \
            land on frame 704
              take its photographs again (photographed: no), or put the panel where it lands on \
            bar 11 beat 2.25\
            """);
  }

  @Test
  void where_any_return_would_do_the_error_names_the_frame_the_film_would_have() {
    // Panel 1 asks for 10 bars, so glimmer 3 suits best: on frame 11 x 64.
    TimingSheet free = plan(90, "10 bars", "glimmer", 20).time();
    assertThat(free.shots().get(1).reveals().get(0).room().landsFrame()).isEqualTo(704);
    assertThat(told(plan(90, "10 bars", "glimmer", 20).photographed(622, 660)))
        .contains("to land on frame 660, but would now land on frame 704");
  }

  @Test
  void other_photographs_of_a_photographed_reveal_are_an_error_that_names_it() {
    assertThat(told(plan(96, "glimmer 3", 12).photographed(622, 660)))
        .isEqualTo(
            """
            quay.yaml, reveals: lamp-1 in panel 2 was photographed with different timing
              take its photographs again (photographed: no), or restore the reveal's settings\
            """);
  }

  @Test
  void neighbors_that_leave_a_photographed_reveal_no_room_are_told_with_it() {
    assertThat(
            told(
                plan(96, "glimmer 3", 20)
                    .photographed(622, 660)
                    .panel("bar 11 beat 4", "")
                    .panel("bar 14", "")))
        .startsWith(
            "quay.yaml, line 12: panel 2 (line 11, on glimmer 3 at bar 11, with 20 photographs of"
                + " lamp-1, already photographed) and panel 3 (line 12, on bar 11 beat 4) don't both"
                + " fit:");
  }

  @Test
  void music_that_moved_under_a_locked_panel_is_told() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(16);
    TimingSheet sheet =
        new PlanBuilder(music)
            .panel("", "")
            .panel("bar 5", "")
            .locked(230, 400)
            .panel("", "")
            .time();
    assertThat(sheet.shots().get(1).frames()).isEqualTo(new FrameSpan(230, 400));
    assertThat(sheet.findings())
        .extracting(Finding::sentence)
        .contains("is locked, but bar 5 is 10 frames after its first frame");
  }

  @Test
  void a_locked_panel_keeps_its_frames_whatever_the_music_does() {
    PlanBuilder plan = plan(90, "glimmer 3", 20).locked(600, 800).panel("", "");
    TimingSheet sheet = plan.time();
    assertThat(sheet.shots().get(1).frames()).isEqualTo(new FrameSpan(600, 800));
  }

  @Test
  void a_reveal_in_a_locked_panel_is_held_like_a_photographed_one() {
    assertThat(told(plan(90, "glimmer 3", 20).locked(600, 800).laid(622, 660).panel("", "")))
        .isEqualTo(
            """
            quay.yaml, reveals: lamp-1 in panel 2 was locked to land on frame 660, but would now land \
            on frame 704
              unlock panel 2 (locked: no), or put the panel where it lands on bar 11 beat 2.25\
            """);
  }

  @Test
  void a_locked_panel_shows_its_reveal_as_it_was_though_there_is_room_for_more() {
    TimingSheet kept =
        plan(96, "glimmer 3", 20).locked(600, 800).laid(641, 660).panel("", "").time();
    assertThat(kept.shots().get(1).reveals().get(0).way().framesPerPhotograph()).isEqualTo(1);
  }
}

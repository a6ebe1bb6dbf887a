package org.barsheet.align.conflict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.barsheet.timing.Reveals;
import org.junit.jupiter.api.Test;

/** What a director is told when a plan cannot be kept. A bar has 60 frames, a beat 15. */
class ConflictTest {

  private static MusicBuilder music() {
    return new MusicBuilder()
        .tempo(96)
        .bars(16)
        .motif("glimmer", 3, 1)
        .motif("glimmer", 7, 1)
        .motif("glimmer", 11, 1);
  }

  private static List<Problem> refused(PlanBuilder plan) {
    InputException refusal = catchThrowableOfType(InputException.class, plan::time);
    return refusal.problems();
  }

  private static String told(PlanBuilder plan) {
    assertThat(refused(plan)).hasSize(1);
    return refused(plan).get(0).toString();
  }

  @Test
  void panels_that_want_more_room_than_lies_between_two_places() {
    String told =
        told(
            new PlanBuilder(music())
                .panel("", "")
                .panel("glimmer 1", "3..4 bars")
                .panel("", "2..3 bars")
                .panel("bar 7", "")
                .panel("bar 12", ""));
    assertThat(told)
        .isEqualTo(
            """
            quay.yaml, line 13: panel 2 (line 11, on glimmer 1 at bar 3, 3..4 bars long), panel 3 \
            (line 12, 2..3 bars long) and panel 4 (line 13, on bar 7) don't all fit: 60 frames \
            short
              let panel 2 shrink to 2 bars; or let panel 3 shrink to 1 bar; or put panel 4 on \
            bar 8, 60 frames later; or leave out the cue of panel 2\
            """);
  }

  @Test
  void a_reveal_that_has_no_room_before_the_panel_in_front() {
    String told =
        told(
            new PlanBuilder(music())
                .opening("lamp-1", "small-lamp")
                .panel("", "")
                .panel("bar 8", "")
                .panel("glimmer 2", "", List.of(Reveals.reveal("lamp-1", 60, 2))));
    assertThat(told)
        .isEqualTo(
            """
            quay.yaml, line 12: panel 2 (line 11, on bar 8) and panel 3 (line 12, on glimmer 2 at \
            bar 7) don't both fit: 20 frames short
              put panel 2 on bar 7, 60 frames earlier; or put panel 3 on glimmer 3 (bar 11), 240 \
            frames later\
            """);
  }

  @Test
  void panels_out_of_story_order() {
    String told =
        told(new PlanBuilder(music()).panel("", "").panel("bar 9", "").panel("glimmer 1", ""));
    assertThat(told)
        .isEqualTo(
            """
            quay.yaml, line 12: panel 2 (line 11, on bar 9) and panel 3 (line 12, on glimmer 1 at \
            bar 3) don't both fit: 361 frames short
              put panel 2 on bar 2, 420 frames earlier; or put panel 3 on glimmer 3 (bar 11), 480 \
            frames later\
            """);
  }

  @Test
  void panels_too_short_to_reach_the_end() {
    String told =
        told(
            new PlanBuilder(music())
                .panel("", "2..4 bars")
                .panel("", "")
                .panel("bar 9", "1..2 bars"));
    assertThat(told)
        .isEqualTo(
            """
            quay.yaml, line 12: panel 3 (line 12, on bar 9, 1..2 bars long) leaves 360 frames \
            empty
              put panel 3 on bar 15, 360 frames later; or let panel 3 grow to 8 bars\
            """);
  }

  @Test
  void the_smallest_fix_comes_first() {
    String told =
        told(
            new PlanBuilder(music())
                .panel("", "")
                .panel("bar 5", "")
                .panel("6 bars into panel 2", "")
                .panel("bar 9", ""));
    assertThat(told)
        .isEqualTo(
            """
            quay.yaml, line 13: panel 2 (line 11, on bar 5), panel 3 (line 12, on 6 bars into \
            panel 2) and panel 4 (line 13, on bar 9) don't all fit: 121 frames short
              put panel 2 on bar 2, 180 frames earlier; or let panel 3 begin 3 bars into panel 2; \
            or put panel 4 on bar 12, 180 frames later\
            """);
  }

  @Test
  void a_place_between_beats_is_told_the_nearest_beat() {
    String told =
        told(
            new PlanBuilder(music())
                .opening("lamp-1", "small-lamp")
                .panel("", "")
                .panel("bar 7 beat 4.2", "")
                .panel("glimmer 2", "", List.of(Reveals.reveal("lamp-1", 60, 2))));
    assertThat(told).contains("\n  put panel 2 on bar 7 beat 3, 18 frames earlier; or ");
  }

  @Test
  void a_length_past_the_whole_film() {
    String told = told(new PlanBuilder(music()).panel("", "").panel("", "400 bars"));
    assertThat(told)
        .isEqualTo(
            """
            quay.yaml, line 11: panel 2 asks for 400 bars, which is longer than the whole film
              ask for less; the film has 960 frames and ends in bar 16\
            """);
  }

  @Test
  void a_locked_panel_that_would_have_to_move() {
    String told =
        told(
            new PlanBuilder(music())
                .panel("", "")
                .panel("", "")
                .locked(100, 200)
                .panel("bar 4", ""));
    assertThat(told)
        .isEqualTo(
            """
            quay.yaml, line 12: panel 2 (line 11, locked on frames 100 to 199) and panel 3 (line \
            12, on bar 4) don't both fit: 20 frames short
              unlock panel 2; or leave out the cue of panel 3\
            """);
  }

  @Test
  void two_reveals_of_a_panel_that_lands_too_soon() {
    String told =
        told(
            new PlanBuilder(music())
                .opening("lamp-1", "small-lamp")
                .opening("lamp-2", "small-lamp")
                .panel("", "")
                .panel("", "")
                .locked(120, 230)
                .panel(
                    "bar 5",
                    "",
                    List.of(Reveals.reveal("lamp-1", 10, 2), Reveals.reveal("lamp-2", 100, 1))));
    assertThat(told)
        .isEqualTo(
            """
            quay.yaml, line 12: panel 2 (line 11, locked on frames 120 to 229) and panel 3 (line \
            12, on bar 5, with 10 photographs of lamp-1 and 100 photographs of lamp-2) don't both \
            fit: 23 frames short
              put panel 3 on bar 6, 60 frames later; or give lamp-2 in panel 3 at most 33 \
            photographs on ones instead of 100; or unlock panel 2\
            """);
  }
}

package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.plan.Panel;
import org.junit.jupiter.api.Test;

/** Where panels go when the plan can be kept. At 96 a minute and 24 fps a beat has 15. */
class PanelPlacingTest {

  private static final int BAR = 60;

  private static MusicBuilder music() {
    return new MusicBuilder()
        .tempo(96)
        .bars(16)
        .motif("glimmer", 3, 1)
        .motif("glimmer", 7, 1)
        .motif("glimmer", 11, 1)
        .mark("A", 9);
  }

  private static List<Long> cuts(TimingSheet sheet) {
    return sheet.shots().stream().map(shot -> shot.frames().start()).toList();
  }

  @Test
  void panels_stand_where_the_plan_says() {
    TimingSheet sheet =
        new PlanBuilder(music())
            .panel("", "4 bars")
            .panel("bar 5", "")
            .panel("glimmer 2", "")
            .panel("mark A", "")
            .panel("01:00:35:12", "")
            .time();
    assertThat(cuts(sheet)).containsExactly(0L, 4L * BAR, 6L * BAR, 8L * BAR, 35L * 24 + 12);
    assertThat(sheet.lengthFrames()).isEqualTo(16L * BAR);
    assertThat(sheet.shots().get(4).frames().endExclusive()).isEqualTo(16L * BAR);
  }

  @Test
  void panels_that_are_no_neighbors_do_not_share_a_return_either() {
    MusicBuilder drawnOut = new MusicBuilder().tempo(96).bars(16).longMotif("glimmer", 3, 21);
    PlanBuilder plan =
        new PlanBuilder(drawnOut.motif("glimmer", 11, 1))
            .opening("lamp-1", "small-lamp")
            .panel("", "")
            .panel("glimmer", "")
            .panel("bar 5", "")
            .panel("glimmer", "", List.of(Reveals.reveal("lamp-1", 20, 2)));
    // Bars 7 and 8 would suit the last panel better: its accent there is that of the long return.
    assertThat(plan.time().shots().stream().map(shot -> shot.cue().id()).toList())
        .containsExactly("free-1", "glimmer-1", "bar-5", "glimmer-2");
  }

  @Test
  void a_length_in_bars_counts_from_the_music() {
    TimingSheet sheet =
        new PlanBuilder(music())
            .musicStarts(Seconds.of(2))
            .panel("", "4 bars")
            .panel("", "")
            .panel("bar 9", "")
            .time();
    assertThat(cuts(sheet)).containsExactly(0L, 48L + 4 * BAR, 48L + 8 * BAR);
    assertThat(sheet.shots().get(0).got()).isEqualTo("4 bars");
  }

  @Test
  void the_cut_falls_on_the_latest_beat_that_leaves_room_for_the_reveal_and_its_hold() {
    // glimmer 2 begins in bar 7; its accent is the fifth beat, bar 8 beat 1, frame 420.
    // 30 on twos begin 58 frames before; less 12 for the closed hold is 350; the beat is at 345.
    TimingSheet sheet =
        new PlanBuilder(music())
            .opening("lamp-1", "small-lamp")
            .panel("", "")
            .panel("glimmer 2", "", List.of(Reveals.reveal("lamp-1", 30, 2)))
            .panel("bar 10", "")
            .time();
    assertThat(cuts(sheet)).containsExactly(0L, 345L, 540L);
    assertThat(sheet.shots().get(1).startsAt()).hasToString("bar 6 beat 4");
    assertThat(420 - 58 - 345).isEqualTo(17);
  }

  @Test
  void a_panel_can_be_cut_so_long_before_its_cue() {
    TimingSheet sheet =
        new PlanBuilder(music())
            .panel("", "")
            .panel("glimmer 2", "")
            .cut(new Panel.Before(org.barsheet.plan.Length.parse("1 beat")))
            .time();
    assertThat(cuts(sheet)).containsExactly(0L, 6L * BAR - 15);
  }

  @Test
  void a_length_in_frames_is_kept_to_the_frame_where_the_next_panel_is_free() {
    TimingSheet sheet =
        new PlanBuilder(music()).panel("", "100 f").panel("", "37 f").panel("", "").time();
    assertThat(cuts(sheet)).containsExactly(0L, 100L, 137L);
  }

  @Test
  void a_place_into_the_panel_before_follows_that_panel() {
    TimingSheet sheet =
        new PlanBuilder(music())
            .panel("", "")
            .panel("bar 5", "")
            .panel("2 bars into panel 2", "")
            .panel("36 f into panel 3", "")
            .time();
    assertThat(cuts(sheet)).containsExactly(0L, 240L, 360L, 396L);
  }

  @Test
  void a_locked_panel_stays_on_its_frames() {
    TimingSheet sheet =
        new PlanBuilder(music())
            .panel("", "")
            .panel("", "4 bars")
            .locked(77, 301)
            .panel("", "")
            .time();
    assertThat(sheet.shots().get(1).frames().start()).isEqualTo(77);
    assertThat(sheet.shots().get(1).frames().endExclusive()).isEqualTo(301);
  }

  @Test
  void a_plan_of_more_panels_than_can_be_placed_is_refused_in_a_sentence() {
    PlanBuilder plan = new PlanBuilder(new MusicBuilder().bars(4));
    for (int p = 0; p <= TimingPlanner.MOST_PANELS; p++) {
      plan.panel("", "");
    }
    assertThatThrownBy(plan::time)
        .isInstanceOf(InputException.class)
        .hasMessageContaining("the plan has 4,001 panels; 4,000 at most can be placed at once");
  }
}

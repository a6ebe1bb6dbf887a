package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.barsheet.clock.FrameSpan;
import org.barsheet.timing.LaidPanel.Landing;
import org.junit.jupiter.api.Test;

/** What is said about panels that moved between two runs. */
class PanelChangeTest {

  private static LaidPanel panel(String name, String cue, long start, long end) {
    return new LaidPanel(name, cue.replace(' ', '-'), cue, new FrameSpan(start, end), List.of());
  }

  private static LaidPanel lands(LaidPanel panel, String opening, long frame) {
    return new LaidPanel(
        panel.name(),
        panel.cueId(),
        panel.cue(),
        panel.frames(),
        List.of(new Landing(opening, frame)));
  }

  private static List<String> said(List<LaidPanel> before, List<LaidPanel> now) {
    return PanelChange.sentences(PanelChange.between(before, now));
  }

  @Test
  void nothing_is_said_where_nothing_moved() {
    List<LaidPanel> film = List.of(panel("1", "bar 1", 0, 60), panel("2", "bar 2", 60, 120));
    assertThat(said(film, film)).isEmpty();
  }

  @Test
  void a_panel_that_moved_is_told_with_its_cue() {
    assertThat(
            said(
                List.of(panel("8", "bar 30", 0, 60), panel("9", "glimmer 5, bar 33", 60, 120)),
                List.of(panel("8", "bar 30", 0, 72), panel("9", "glimmer 5, bar 33", 72, 120))))
        .containsExactly("panel 9 now begins 12 frames later (glimmer 5, bar 33)");
  }

  @Test
  void another_cue_is_told_with_the_one_before() {
    assertThat(
            said(
                List.of(panel("1", "bar 1", 0, 60), panel("2", "glimmer 1, bar 2", 60, 120)),
                List.of(panel("1", "bar 1", 0, 59), panel("2", "mark A, bar 2", 59, 120))))
        .containsExactly(
            "panel 2 is now on mark A, bar 2 and begins 1 frame earlier;"
                + " it was on glimmer 1, bar 2");
  }

  @Test
  void new_panels_and_those_gone_are_told() {
    assertThat(
            said(
                List.of(panel("1", "bar 1", 0, 60), panel("2", "bar 2", 60, 120)),
                List.of(panel("1", "bar 1", 0, 60), panel("3", "bar 2", 60, 120))))
        .containsExactly("panel 3 is new (bar 2)", "panel 2 is gone (bar 2)");
  }

  @Test
  void three_panels_or_more_that_move_alike_are_told_together() {
    List<LaidPanel> before =
        Stream.of(1, 2, 3, 4).map(i -> panel("" + i, "bar " + i, 60L * i, 60L * i + 60)).toList();
    List<LaidPanel> now =
        Stream.of(1, 2, 3, 4)
            .map(i -> panel("" + i, "bar " + i, 60L * i + 5, 60L * i + 65))
            .toList();
    assertThat(said(before, now)).containsExactly("panels 1 to 4 now begin 5 frames later");
    assertThat(said(before.subList(0, 2), now.subList(0, 2)))
        .containsExactly(
            "panel 1 now begins 5 frames later (bar 1)",
            "panel 2 now begins 5 frames later (bar 2)");
  }

  @Test
  void a_film_that_grew_is_told_by_its_last_panel() {
    assertThat(said(List.of(panel("1", "bar 1", 0, 60)), List.of(panel("1", "bar 1", 0, 84))))
        .containsExactly("panel 1 is now 24 frames longer");
  }

  @Test
  void a_reveal_that_lands_elsewhere_in_its_shot_is_told() {
    LaidPanel shot = panel("4", "glimmer 1, bar 9", 0, 120);
    assertThat(said(List.of(lands(shot, "lamp-1", 60)), List.of(lands(shot, "lamp-1", 75))))
        .containsExactly("lamp-1 in panel 4 now lands 15 frames later");
    LaidPanel moved = panel("4", "glimmer 1, bar 9", 15, 120);
    assertThat(said(List.of(lands(shot, "lamp-1", 60)), List.of(lands(moved, "lamp-1", 75))))
        .containsExactly("panel 4 now begins 15 frames later (glimmer 1, bar 9)");
  }
}

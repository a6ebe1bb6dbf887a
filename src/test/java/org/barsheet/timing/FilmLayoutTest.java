package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The best few ways to lay a plan, told by what differs. At 96 a minute a bar has 60 frames. */
class FilmLayoutTest {

  private static PlanBuilder plan() {
    MusicBuilder music =
        new MusicBuilder()
            .tempo(96)
            .bars(12)
            .motif("glimmer", 4, 1)
            .motif("glimmer", 6, 1)
            .motif("glimmer", 8, 1);
    return new PlanBuilder(music).panel("", "").panel("glimmer", "5 bars").panel("bar 11", "");
  }

  @Test
  void the_first_is_the_one_on_the_sheets() {
    FilmLayout best = plan().layouts(5).get(0);
    assertThat(best.shots().stream().map(Shot::frames).toList())
        .isEqualTo(plan().time().shots().stream().map(Shot::frames).toList());
    assertThat(best.more()).isZero();
    assertThat(best.sentences()).isEmpty();
  }

  @Test
  void the_others_say_what_differs_and_why_it_costs_more() {
    List<FilmLayout> answers = plan().layouts(5);
    assertThat(answers).hasSize(3);
    // 7 bars for the 5 asked cost 4 (7/5 + 5/7 - 2), and the panel before is shorter by 2 bars.
    assertThat(answers.get(1).sentences())
        .containsExactly(
            "panel 2 is on glimmer 1, bar 4, not on glimmer 2, bar 6: begins 120 frames earlier");
    assertThat(answers.get(1).why())
        .isEqualTo("panel 2 120 frames longer than the 5 bars you asked for");
    assertThat(answers.get(1).more()).isBetween(0.4, 0.6);
    assertThat(answers.get(2).more()).isGreaterThan(answers.get(1).more());
  }

  @Test
  void where_every_panel_is_fixed_there_is_one() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(4);
    assertThat(new PlanBuilder(music).panel("", "").panel("bar 3", "").layouts(5)).hasSize(1);
  }
}

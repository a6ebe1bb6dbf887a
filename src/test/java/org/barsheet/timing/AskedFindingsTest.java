package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.barsheet.timing.Finding.Severity;
import org.junit.jupiter.api.Test;

/** What a panel asked for and did not get. A bar has 60 frames, a beat 15. */
class AskedFindingsTest {

  private static MusicBuilder music() {
    return new MusicBuilder().tempo(96).bars(32).motif("glimmer", 5, 1);
  }

  private static List<String> warnings(PlanBuilder plan) {
    return plan.time().findings().stream()
        .filter(finding -> finding.severity() == Severity.WARNING)
        .map(Finding::sentence)
        .filter(sentence -> !sentence.startsWith("tide"))
        .toList();
  }

  @Test
  void a_shot_under_12_frames_is_a_warning() {
    PlanBuilder plan = new PlanBuilder(music()).panel("", "").panel("bar 9", "");
    assertThat(warnings(plan.panel("bar 9 beat 1.7", ""))).containsExactly("lasts 11 frames");
  }

  @Test
  void a_length_that_got_less_than_half_or_more_than_twice_is_a_warning() {
    PlanBuilder plan = new PlanBuilder(music()).panel("", "").panel("bar 9", "3 bars");
    assertThat(warnings(plan.panel("bar 10", "7 bars").panel("bar 25", "")))
        .containsExactly("gets 1 bar; you asked for 3 bars", "gets 15 bars; you asked for 7 bars");
  }

  @Test
  void a_return_far_from_the_bar_asked_is_a_warning() {
    PlanBuilder far = new PlanBuilder(music()).panel("", "").panel("glimmer near bar 10", "");
    assertThat(warnings(far))
        .containsExactly("asks for glimmer near bar 10; the nearest is in bar 5, 5 bars away");
    PlanBuilder near = new PlanBuilder(music()).panel("", "").panel("glimmer near bar 9", "");
    assertThat(warnings(near)).isEmpty();
  }
}

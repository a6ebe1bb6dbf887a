package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Motifs have short signs in the plan's order, for the narrow column of the exposure sheet. */
class MotifSignsTest {

  private static List<String> signs(int motifs) {
    String[] names = IntStream.rangeClosed(1, motifs).mapToObj(m -> "m" + m).toArray(String[]::new);
    PlanBuilder plan = new PlanBuilder(new MusicBuilder().bars(4)).motifs(names);
    return plan.panel("", "").time().tallies().stream().map(MotifTally::sign).toList();
  }

  @Test
  void motifs_are_numbered_in_the_order_of_the_plan() {
    assertThat(signs(3)).containsExactly("M1", "M2", "M3");
  }

  /**
   * Rehearsal letters are capitals, one or two of them; a note has no M (common practice, no
   * source).
   */
  @Test
  void no_sign_can_be_read_as_a_rehearsal_letter_or_a_note() {
    assertThat(signs(120)).doesNotHaveDuplicates().allMatch(sign -> sign.matches("M[1-9][0-9]*"));
  }
}

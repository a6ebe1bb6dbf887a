package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Motifs are lettered in the plan's order, for the narrow column of the exposure sheet. */
class MotifLettersTest {

  private static List<String> letters(int motifs) {
    String[] names = IntStream.rangeClosed(1, motifs).mapToObj(m -> "m" + m).toArray(String[]::new);
    PlanBuilder plan = new PlanBuilder(new MusicBuilder().bars(4)).motifs(names);
    return plan.panel("", "").time().tallies().stream().map(MotifTally::letter).toList();
  }

  @Test
  void motifs_are_lettered_from_a_to_z() {
    assertThat(String.join("", letters(26))).isEqualTo("ABCDEFGHIJKLMNOPQRSTUVWXYZ");
  }

  /** As the columns of a spreadsheet are: common practice, no source. */
  @Test
  void after_z_come_aa_and_ab_and_after_az_comes_ba() {
    List<String> letters = letters(54);
    assertThat(letters.subList(25, 29)).containsExactly("Z", "AA", "AB", "AC");
    assertThat(letters.subList(51, 54)).containsExactly("AZ", "BA", "BB");
  }

  @Test
  void after_zz_come_three_letters_and_no_two_motifs_share_one() {
    List<String> letters = letters(703);
    assertThat(letters.subList(700, 703)).containsExactly("ZY", "ZZ", "AAA");
    assertThat(letters).doesNotHaveDuplicates();
  }
}

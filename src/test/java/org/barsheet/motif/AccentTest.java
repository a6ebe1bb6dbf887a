package org.barsheet.motif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which note of a motif the photograph lands on. */
class AccentTest {

  @ParameterizedTest
  @CsvSource({"1, 0", "3, 2", "5, 4"})
  void notes_count_from_1(int note, int index) {
    assertThat(new Accent(note).indexIn(5)).isEqualTo(index);
  }

  @Test
  void the_first_and_the_last_are_those_of_any_motif() {
    assertThat(Accent.FIRST.indexIn(5)).isZero();
    assertThat(Accent.LAST.indexIn(5)).isEqualTo(4);
    assertThat(Accent.LAST.indexIn(1)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"6, 5, 4", "1000, 5, 4", "2, 1, 0"})
  void a_number_past_the_end_means_the_last_note(int note, int notes, int index) {
    assertThat(new Accent(note).indexIn(notes)).isEqualTo(index);
  }

  @Test
  void it_is_told_in_the_words_a_plan_reads() {
    assertThat(Accent.FIRST).hasToString("first");
    assertThat(Accent.LAST).hasToString("last");
    assertThat(new Accent(3)).hasToString("note 3");
  }

  @Test
  void there_is_no_note_before_the_first() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Accent(-1));
  }
}

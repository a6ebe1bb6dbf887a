package org.barsheet.motif.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.motif.Notes;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MotifHearingTest {

  private static final int BAR = 4 * ScoreSketch.TICKS_PER_QUARTER;

  private final Score score =
      new ScoreSketch()
          .part("Celesta")
          .bar(2, "r/4 C5/4 E5/8 r/8 G5/4")
          .part("Piano")
          .bar(2, "C5/4 D5/4 E5/2")
          .bar(2, "E4/2 G4/2")
          .bar(2, "C3/1")
          .part("Flute")
          .bar(4, "C6/12 D6/12 E6/12 F6/4")
          .drums("Kit")
          .bar(2, "C2/4 C2/4")
          .score();

  @Test
  void a_line_is_heard_from_its_first_note_with_its_rests() {
    assertThat(hear(0, 2)).isEqualTo("C5/4 E5/8 r/8 G5/4");
  }

  @Test
  void triplets_are_heard_exactly() {
    assertThat(hear(2, 4)).isEqualTo("C6/12 D6/12 E6/12 F6/4");
  }

  @Test
  void a_players_touch_is_not_written_down() {
    Score played =
        new ScoreSketch()
            .part("Piano")
            .note(60, 0, 500)
            .note(62, 480, 700)
            .note(64, 722, 930)
            .note(65, 960, 1440)
            .score();
    assertThat(Notes.print(MotifHearing.of(played).hear(played.parts().get(0), 0, BAR)))
        .isEqualTo("C4/4 D4/8 E4/8 F4/4");
  }

  @Test
  void where_a_part_rests_the_parts_that_play_are_named() {
    Problem problem = refused(2, 2);
    assertThat(problem.sentence()).isEqualTo("Flute doesn't begin a note there");
    assertThat(problem.remedy())
        .isEqualTo("Celesta plays C5/4 E5/8 r/8 G5/4; Piano plays C5/4 D5/4 E5/2");
  }

  @Test
  void where_every_part_rests_another_place_is_asked_for() {
    assertThat(refused(0, 3).remedy())
        .isEqualTo("no part begins a note there: quote another place");
  }

  @Test
  void where_two_notes_sound_at_once_each_line_is_shown_and_the_top_one_offered() {
    Problem problem = refused(1, 2);
    assertThat(problem.sentence()).isEqualTo("Piano plays more than one note at once there");
    assertThat(problem.excerpt())
        .containsExactly("top line: C5/4 D5/4 E5/2", "under it: E4/2 G4/2", "under it: C3/1");
    assertThat(problem.remedy()).isEqualTo("for its top line write notes: \"C5/4 D5/4 E5/2\"");
  }

  @Test
  void drums_have_no_line() {
    assertThat(refused(3, 2).sentence()).isEqualTo("Kit is a drum part: it plays no pitches");
  }

  @ParameterizedTest
  @CsvSource({"C5/4, one note", "C5/4 D5/4 E5/4, 3 notes of one length"})
  void a_motif_found_everywhere_is_refused_with_the_reason(String notes, String what) {
    assertThat(MotifHearing.refusal(Notes.parse(notes)).orElseThrow().sentence())
        .isEqualTo("a motif of " + what + " turns up everywhere by chance");
  }

  @ParameterizedTest
  @ValueSource(strings = {"C5/4 D5/8 E5/4", "C5/4 D5/4 E5/4 F5/4", "C5/4 D5/2"})
  void four_notes_or_two_lengths_are_enough(String notes) {
    assertThat(MotifHearing.refusal(Notes.parse(notes))).isEmpty();
  }

  private String hear(int part, int bar) {
    return Notes.print(
        MotifHearing.of(score)
            .hear(score.parts().get(part), (long) BAR * (bar - 1), (long) BAR * bar));
  }

  private Problem refused(int part, int bar) {
    return catchThrowableOfType(InputException.class, () -> hear(part, bar)).problems().get(0);
  }
}

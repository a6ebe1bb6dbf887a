package org.barsheet.suggestions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;

class PassagesTest {

  private static final String THEME = "C5/4 E5/8 D5/8 G5/4 A5/8";
  private static final String[] PITCHES = {"C3", "D3", "Eb3", "F3", "G3", "A3", "Bb3", "B3"};

  @Test
  void a_score_that_is_not_long_is_taken_whole() {
    Score score = music(100);
    assertThat(Passages.of(score)).isSameAs(score);
  }

  @Test
  void passages_of_a_long_score_are_notes_of_it_in_order_from_the_first_to_the_last() {
    Score score = music(5000);
    List<Note> some = Passages.of(score).notes();
    assertThat(some).hasSize(Passages.MOST_NOTES).doesNotHaveDuplicates();
    assertThat(score.notes()).containsSubsequence(some);
    assertThat(some.get(0)).isEqualTo(score.notes().get(0));
    assertThat(some.get(some.size() - 1)).isEqualTo(score.notes().get(score.notes().size() - 1));
  }

  @Test
  void what_is_suggested_in_a_long_score_is_counted_throughout() {
    Score score = music(5000);
    assertThat(MotifSuggestions.of(score))
        .anySatisfy(
            suggestion -> {
              assertThat(suggestion.notes()).startsWith(THEME);
              assertThat(suggestion.returns()).hasSize(5000 / 4);
            });
  }

  @Test
  void notes_by_part_are_those_of_each_part() {
    Score score = music(20);
    for (Part part : score.parts()) {
      assertThat(score.notesByPart().get(part.index())).isEqualTo(score.notesOf(part)).isNotEmpty();
    }
  }

  /** A theme every four bars over eight eighths a bar that never repeat for long. */
  private static Score music(int bars) {
    SplittableRandom random = new SplittableRandom(3);
    ScoreSketch sketch = new ScoreSketch().part("Flute");
    for (int bar = 1; bar <= bars; bar += 4) {
      sketch.bar(bar, THEME);
    }
    sketch.part("Viola");
    for (int bar = 1; bar <= bars; bar++) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < 8; i++) {
        line.append(PITCHES[random.nextInt(PITCHES.length)]).append("/8 ");
      }
      sketch.bar(bar, line.toString().strip());
    }
    return sketch.score();
  }
}

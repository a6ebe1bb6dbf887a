package org.barsheet.suggestions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;
import org.barsheet.motif.PlantedMotifs;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;

class MotifSuggestionsTest {

  @Test
  void a_figure_that_keeps_returning_comes_first_and_can_be_pasted() {
    SplittableRandom random = new SplittableRandom(9);
    for (int trial = 0; trial < 20; trial++) {
      PlantedMotifs music = new PlantedMotifs(random);
      List<MotifNote> line = PlantedMotifs.motif(random);
      for (int time = 0; time < 6; time++) {
        music.plant(time % 3, 3 + 36 * time + random.nextInt(6), line);
      }
      Suggestion first = MotifSuggestions.of(music.score(0, 1, 2)).get(0);
      assertThat(first.returns()).as("trial " + trial).hasSizeGreaterThanOrEqualTo(6);
      List<MotifNote> pasted = Notes.parse(first.notes());
      assertThat(pasted.size()).as("trial " + trial).isBetween(line.size() - 2, line.size() + 3);
    }
  }

  @Test
  void what_opens_a_piece_and_returns_is_suggested_though_it_returns_changed() {
    Score score =
        new ScoreSketch()
            .part("Flute")
            .bar(1, "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2")
            .bar(5, "G5/4 B5/8 A5/8 C6/4 D6/8 C6/8 A5/2")
            .part("Viola")
            .bar(3, "G4/4 B4/8 A4/8 C5/4 D5/8 C5/8 A4/2")
            .score();
    assertThat(MotifSuggestions.of(score))
        .first()
        .satisfies(
            suggestion -> {
              assertThat(suggestion.notes()).isEqualTo("C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2");
              assertThat(suggestion.returns()).hasSize(3);
            });
  }

  /** 23/192 of a whole note is an eighth let go a little early; a triplet eighth is none. */
  @Test
  void a_last_note_let_go_early_is_suggested_as_written() {
    assertThat(suggestedWithLast("E5/12+32+192")).endsWith(" A5/8 E5/8");
    assertThat(suggestedWithLast("E5/12")).endsWith(" A5/8 E5/12");
  }

  private static String suggestedWithLast(String last) {
    ScoreSketch sketch = new ScoreSketch().part("Flute");
    for (int time = 0; time < 3; time++) {
      sketch.bar(1 + 4 * time, "C5/4 E5/8 D5/8 G5/4 A5/8 " + last);
    }
    return MotifSuggestions.of(sketch.score()).get(0).notes();
  }

  @Test
  void a_theme_is_suggested_without_what_only_sometimes_follows_it() {
    String theme = "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/4+8 F5/8 ";
    String after = "B4/8 D5/4+8 Bb4/8 F4/8 Ab4/4 G4/4";
    ScoreSketch sketch = new ScoreSketch().part("Flute");
    for (int time = 0; time < 4; time++) {
      sketch.bar(1 + 5 * time, theme + after);
      sketch.bar(31 + 3 * time, theme + "G" + (3 + time % 3) + "/2");
    }
    assertThat(MotifSuggestions.of(sketch.score()))
        .first()
        .satisfies(
            suggestion -> {
              assertThat(Notes.parse(suggestion.notes())).hasSizeBetween(8, 9);
              assertThat(suggestion.returns()).hasSize(8);
            });
  }

  /** Round and round, so that a figure begins before it has ended; the theme comes three times. */
  @Test
  void an_accompaniment_that_goes_round_in_circles_does_not_come_before_a_theme() {
    ScoreSketch sketch = new ScoreSketch().part("Harp");
    for (int bar = 1; bar <= 24; bar++) {
      sketch.bar(bar, "D3/16 D4/8 A3/16 ".repeat(4));
    }
    sketch.part("Flute");
    for (int bar = 1; bar <= 17; bar += 8) {
      sketch.bar(bar, "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2");
    }
    assertThat(MotifSuggestions.of(sketch.score()))
        .first()
        .satisfies(suggestion -> assertThat(suggestion.notes()).startsWith("C5/4 E5/8 D5/8"));
  }

  @Test
  void a_score_without_notes_has_no_suggestions() {
    Score score = new ScoreSketch().drums("Kit").bar(1, "C2/4 C2/4 C2/4 C2/4").score();
    assertThat(MotifSuggestions.of(score)).isEmpty();
  }
}

package org.barsheet.motif.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.Notes;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearMissTest {

  private static final String LAMP = "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2 C5/2";
  private static final long BAR = 4 * ScoreSketch.TICKS_PER_QUARTER;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "C5/4 E5/8 D5/8 r/4 r/8 G5/8 E5/2 C5/2 | note 4 missing, note 5 missing",
        "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2 C5/2 | ''",
        "C5/4 E5/8 D5/8 G5/4+16 A5/16 G5/8 E5/2 C5/2 | note 5 late, note 5 held too short, note 4 held too long",
        "C5/4 E5/8 D5/8 A5/4 Bb5/8 A5/8 E5/2 C5/2 | note 4 a step too high, note 5 a semitone or so too low, note 6 a semitone or so too high, note 7 a step too low"
      })
  void what_spoiled_a_return_is_said_note_by_note(String heard, String spoiled) {
    Score score = new ScoreSketch().part("Celesta").bar(2, heard).score();
    NearMiss miss =
        OccurrenceFinder.of(score).nearest(motif(Match.TONAL), BAR, 2 * BAR).orElseThrow();
    assertThat(miss.spoiled()).isEqualTo(spoiled);
    assertThat(miss.startTick()).isEqualTo(BAR);
  }

  @Test
  void a_return_that_counts_says_how() {
    Score score = new ScoreSketch().part("Celesta").bar(2, LAMP).score();
    assertThat(
            OccurrenceFinder.of(score)
                .nearest(motif(Match.TONAL), BAR, 2 * BAR)
                .orElseThrow()
                .sentence())
        .isEqualTo("certain (as given)");
  }

  @Test
  void a_tonal_return_is_a_near_miss_where_exact_ones_are_asked_for() {
    Score score =
        new ScoreSketch()
            .part("Celesta")
            .bar(2, "C5/4 Eb5/8 D5/8 G5/4 Ab5/8 G5/8 Eb5/2 C5/2")
            .score();
    NearMiss miss =
        OccurrenceFinder.of(score).nearest(motif(Match.EXACT), BAR, 2 * BAR).orElseThrow();
    assertThat(miss.certainty()).isEmpty();
    assertThat(miss.sentence())
        .startsWith(
            "near, but not near enough for match: exact (tonal, at the same pitch): note 2");
  }

  @Test
  void where_nothing_like_it_begins_there_is_no_near_miss() {
    Score score = new ScoreSketch().part("Celesta").bar(1, LAMP).bar(8, "C5/1").score();
    assertThat(OccurrenceFinder.of(score).nearest(motif(Match.TONAL), 7 * BAR, 8 * BAR)).isEmpty();
  }

  private static Motif motif(Match match) {
    return new Motif("lamp", List.of(Notes.parse(LAMP)), Accent.FIRST, match, Set.of());
  }
}

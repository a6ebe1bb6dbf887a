package org.barsheet.motif.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;

class PlayedOccurrenceFinderTest {

  private static final String LAMP = "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2 C5/2";

  /** A quarter note lasts from 0.4 to 0.9 s in ticks of 1/960 s; chords are spread by 20 ms. */
  @Test
  void a_motif_is_found_at_any_tempo_and_with_rubato() {
    SplittableRandom random = new SplittableRandom(11);
    for (int trial = 0; trial < 50; trial++) {
      ScoreSketch sketch = new ScoreSketch().part("Piano");
      long start = random.nextLong(960, 2960);
      play(sketch, Notes.parse(LAMP), start, 400 + random.nextInt(500), random);
      play(sketch, Notes.parse("C3/2 G3/2 C3/2 G3/2"), start, 600, random);
      Score score = sketch.score();
      List<Occurrence> found = PlayedOccurrenceFinder.find(score, motif(Set.of()));
      assertThat(found).as("trial " + trial).hasSize(1);
      assertThat(found.get(0).startTick()).isEqualTo(start);
    }
  }

  @Test
  void a_return_at_half_the_usual_pace_is_augmented_if_that_was_asked() {
    SplittableRandom random = new SplittableRandom(3);
    ScoreSketch sketch = new ScoreSketch().part("Piano");
    play(sketch, Notes.parse(LAMP), 1000, 500, random);
    play(sketch, Notes.parse(LAMP), 8000, 520, random);
    play(sketch, Notes.parse(LAMP), 20000, 1010, random);
    Score score = sketch.score();
    assertThat(PlayedOccurrenceFinder.find(score, motif(Set.of(Form.AUGMENTED))))
        .extracting(occurrence -> occurrence.variation().forms())
        .containsExactly(List.of(Form.AS_GIVEN), List.of(Form.AS_GIVEN), List.of(Form.AUGMENTED));
    assertThat(PlayedOccurrenceFinder.find(score, motif(Set.of()))).hasSize(2);
  }

  @Test
  void a_missing_last_note_stands_where_the_playing_would_have_put_it() {
    ScoreSketch sketch = new ScoreSketch().part("Piano");
    play(
        sketch, Notes.parse("C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2"), 0, 500, new SplittableRandom(1));
    Score score = sketch.score();
    Occurrence found = PlayedOccurrenceFinder.find(score, motif(Set.of())).get(0);
    assertThat(found.notes().pitches().get(7)).isEqualTo(-1);
    assertThat(found.notes().ticks().get(7)).isBetween(2800L, 3200L);
  }

  /** Plays a line with a tempo that sways by a sixth and hands that are not quite together. */
  private static void play(
      ScoreSketch sketch,
      List<MotifNote> line,
      long start,
      int perQuarter,
      SplittableRandom random) {
    for (MotifNote note : line) {
      double quarter = note.onset().doubleValue();
      double swayed = quarter + 0.16 * Math.sin(quarter);
      long on = start + Math.round(perQuarter * swayed) + (quarter == 0 ? 0 : random.nextInt(20));
      long length = Math.round(perQuarter * note.length().doubleValue() * 0.9);
      sketch.note(note.pitch(), on, on + Math.max(20, length));
    }
  }

  private static Motif motif(Set<Form> forms) {
    return new Motif("lamp", List.of(Notes.parse(LAMP)), Accent.FIRST, Match.TONAL, forms);
  }
}

package org.barsheet.motif.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.Notes;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;

class MotifReliabilityTest {

  private static final int[] SCALE = {0, 2, 4, 5, 7, 9, 11};

  private final Score score = running(new SplittableRandom(8));

  @Test
  void four_even_notes_are_found_by_chance() {
    MotifReliability plain = of(motif("C5/8 D5/8 E5/8 D5/8"));
    assertThat(plain.isTooPlain()).isTrue();
    assertThat(plain.sentence()).matches("too plain: expect about \\d+ chance matches");
  }

  @Test
  void ten_notes_of_several_lengths_are_not() {
    MotifReliability distinct =
        of(motif("C5/4 G5/8 A5/16 B5/16 C6/4+8 F5/8 E5/4 D5/8 E5/16 C5/16 B4/2"));
    assertThat(distinct.isTooPlain()).isFalse();
    assertThat(distinct.sentence()).isEqualTo("distinct: chance matches are unlikely");
  }

  @Test
  void the_words_agree_with_the_number() {
    assertThat(new MotifReliability(0.8).sentence())
        .isEqualTo("too plain: expect about 1 chance match");
    assertThat(new MotifReliability(2.6).sentence())
        .isEqualTo("too plain: expect about 3 chance matches");
  }

  @Test
  void the_same_is_measured_every_time() {
    Motif motif = motif("C5/8 D5/8 E5/8 F5/8 E5/8");
    assertThat(of(motif)).isEqualTo(of(motif));
  }

  private MotifReliability of(Motif motif) {
    return MotifReliability.of(score, motif, OccurrenceFinder::of);
  }

  /** Two parts of running eighth notes that walk about a scale. */
  private static Score running(SplittableRandom random) {
    ScoreSketch sketch = new ScoreSketch();
    for (String part : List.of("Violin", "Viola")) {
      sketch.part(part);
      int step = 35;
      for (int i = 0; i < 400; i++) {
        step = Math.max(28, Math.min(42, step + random.nextInt(-2, 3)));
        int pitch = SCALE[step % 7] + 12 * (step / 7);
        sketch.note(pitch, i * 240L, i * 240L + 240);
      }
    }
    return sketch.score();
  }

  private static Motif motif(String notes) {
    return new Motif("lamp", List.of(Notes.parse(notes)), Accent.FIRST, Match.TONAL, Set.of());
  }
}

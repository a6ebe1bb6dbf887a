package org.barsheet.motif;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Returns of every kind in composed music; {@link ArrangementEvaluation} counts many more. */
class ArrangementTest {

  private static final long FIRST_SEED = 901;
  private static final int PIECES = 2;

  @ParameterizedTest
  @ValueSource(strings = {"straight", "human", "swing"})
  void returns_of_every_kind_are_found_however_they_are_played(String timing) {
    ArrangementFigures figures = new ArrangementFigures();
    for (long seed = FIRST_SEED; seed < FIRST_SEED + PIECES; seed++) {
      figures.add(ComposedArrangement.of(seed, timing));
    }
    assertThat(figures.share(timing + " written all").all()).isGreaterThan(40);
    assertThat(figures.share(timing + " written all").value())
        .as("%s", figures)
        .isGreaterThan(0.95);
    assertThat(figures.share(timing + " heard-at all").value())
        .as("%s", figures)
        .isGreaterThan(0.95);
    assertThat(figures.share(timing + " asked all").value()).as("%s", figures).isGreaterThan(0.9);
    assertThat(figures.share("precision certain").value()).as("%s", figures).isEqualTo(1);
    assertThat(figures.share(timing + " suggested among five").value())
        .as("%s", figures)
        .isGreaterThan(0.7);
    assertThat(figures.falsePossibleAMinute()).as("%s", figures).isLessThan(0.3);
  }

  @Test
  void tonal_answers_to_subjects_in_long_notes_and_with_large_leaps_are_found() {
    ArrangementFigures figures = new ArrangementFigures();
    for (boolean merged : new boolean[] {false, true}) {
      figures.add(ComposedFugue.of(FIRST_SEED, true, merged));
      figures.add(ComposedFugue.of(FIRST_SEED, false, merged));
    }
    assertThat(figures.share("slow written all").value()).as("%s", figures).isGreaterThan(0.95);
    assertThat(figures.share("slow merged written all").value())
        .as("%s", figures)
        .isGreaterThan(0.9);
    assertThat(figures.share("leaping written all").value()).as("%s", figures).isGreaterThan(0.8);
    assertThat(figures.share("precision certain").value()).as("%s", figures).isEqualTo(1);
  }
}

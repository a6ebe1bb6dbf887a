package org.barsheet.motif;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Prints how many returns planted in arrangements are found: of a folder {@code exports} in the
 * folder named by the system property {@code evaluation.folder}, as {@link ArrangementFolder} reads
 * it.
 */
@Tag("evaluate")
class ArrangementEvaluation {

  /** As many pieces of each timing, from a seed on: {@code -Dfigures.seed}, {@code .pieces}. */
  @Test
  void returns_in_composed_arrangements_are_counted() {
    long seed = Long.getLong("figures.seed", 1);
    int pieces = Integer.getInteger("figures.pieces", 20);
    ArrangementFigures figures = new ArrangementFigures();
    for (long one = seed; one < seed + pieces; one++) {
      for (String timing : List.of("straight", "human", "swing")) {
        figures.add(ComposedArrangement.of(one, timing));
      }
    }
    System.out.println(figures);
    assertThat(figures.share("straight written all").value()).isGreaterThan(0.9);
  }

  @Test
  void entries_of_composed_fugues_are_counted() {
    long seed = Long.getLong("figures.seed", 1);
    ArrangementFigures figures = new ArrangementFigures();
    for (long one = seed; one < seed + Integer.getInteger("figures.fugues", 12); one++) {
      for (boolean merged : new boolean[] {false, true}) {
        figures.add(ComposedFugue.of(one, true, merged));
        figures.add(ComposedFugue.of(one, false, merged));
      }
    }
    System.out.println(figures);
    assertThat(figures.share("slow written all").value()).isGreaterThan(0.5);
  }

  @Test
  void returns_in_a_folder_of_arrangements_are_counted() {
    Path folder = Path.of(System.getProperty("evaluation.folder", "")).resolve("exports");
    List<Arrangement> pieces = new ArrangementFolder(folder).arrangements();
    ArrangementFigures figures = new ArrangementFigures();
    pieces.forEach(figures::add);
    System.out.println(figures);
    assertThat(pieces).isNotEmpty();
  }
}

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

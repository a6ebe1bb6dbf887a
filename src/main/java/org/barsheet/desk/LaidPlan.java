package org.barsheet.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Plan;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.review.ReviewPage;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.LaidPanel;
import org.barsheet.timing.PanelChange;

/**
 * A plan's film as it was laid last. A plan that cannot be laid leaves the film before, with what
 * is wrong.
 *
 * @param film where there ever was one
 * @param json the film as the page takes it, "" where there is none
 * @param problems why the plan cannot be laid as it is; none where it can
 * @param moved what the last change moved, in sentences
 */
record LaidPlan(Optional<FilmSheet> film, String json, List<Problem> problems, List<String> moved) {

  /** Before anything is laid. */
  static final LaidPlan NOTHING = new LaidPlan(Optional.empty(), "", List.of(), List.of());

  /**
   * The same plan after a change.
   *
   * @param reading reads the plan as it is now
   * @param folder with the sheets made last
   */
  LaidPlan again(Path plan, Supplier<Plan> reading, Path folder) {
    try {
      FilmSheet now = Production.film(reading.get(), folder, Progress.SILENT);
      String data = ReviewPage.data(now, Production.name(plan), plan.resolveSibling(""));
      List<String> changes = film.map(before -> moved(before, now)).orElse(List.of());
      return new LaidPlan(Optional.of(now), data, List.of(), changes);
    } catch (InputException wrong) {
      return new LaidPlan(film, json, wrong.problems(), List.of());
    }
  }

  private static List<String> moved(FilmSheet before, FilmSheet now) {
    return PanelChange.sentences(
        PanelChange.between(
            LaidPanel.of(before.timing().shots()), LaidPanel.of(now.timing().shots())));
  }

  /** Errors and warnings that another state of the plan did not have, in sentences. */
  List<String> foundSince(LaidPlan before) {
    List<String> known = before.warnings();
    return warnings().stream().filter(sentence -> !known.contains(sentence)).toList();
  }

  private List<String> warnings() {
    return film.stream()
        .flatMap(laid -> laid.findings().stream())
        .filter(finding -> finding.severity() != Severity.REMARK)
        .map(Finding::inFull)
        .toList();
  }

  /** Whether a window shows the same for both. */
  boolean looksLike(LaidPlan other) {
    return json.equals(other.json) && problems.equals(other.problems);
  }
}

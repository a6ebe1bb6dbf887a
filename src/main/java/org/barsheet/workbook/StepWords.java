package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.shooting.Setup.Standing;
import org.barsheet.shooting.Step;
import org.barsheet.shooting.Stretch;

/** What is done to the paper before something is photographed, and how it stands then. */
final class StepWords {

  private StepWords() {}

  /**
   * {@code cut a fresh flap: hatch}, {@code open: gate}, {@code seen open: lamp 40 %}, a line each.
   */
  static String of(Step step) {
    List<String> lines = new ArrayList<>();
    if (!step.fresh().isEmpty()) {
      lines.add("! put in a fresh flap: " + String.join(", ", step.fresh()));
    }
    if (!step.toOpen().isEmpty()) {
      lines.add("open now: " + open(step.toOpen()));
    }
    List<Standing> open =
        step.take().standing().stream()
            .filter(one -> one.open() > 0 && !step.toOpen().contains(one))
            .toList();
    if (!open.isEmpty()) {
      lines.add((step.toOpen().isEmpty() ? "open: " : "still open: ") + open(open));
    }
    return String.join("\n", lines);
  }

  /** What must be left alone over a night. */
  static String night(Stretch stretch) {
    List<String> all = stretch.step().orElseThrow().take().taken();
    String last = all.get(stretch.to() - 1);
    String next = all.get(stretch.to());
    return "! Night after "
        + last
        + ". Leave flap, supports, model, lamps, camera and focus as they are. In the morning take "
        + last
        + " once more and compare, then go on with "
        + next
        + ".";
  }

  private static String open(List<Standing> standing) {
    return standing.stream().map(StepWords::words).collect(Collectors.joining(", "));
  }

  private static String words(Standing one) {
    long percent = Math.round(100 * one.open());
    return percent >= 100 ? one.opening() : one.opening() + " " + percent + " %";
  }
}

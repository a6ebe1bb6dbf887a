package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.shooting.Setup.Standing;

/** What is done to the paper before something is photographed, and how it stands then. */
public final class StepWords {

  private StepWords() {}

  /** What a hand does first, a line each: {@code open now: gate}. */
  public static List<String> first(Step step) {
    List<String> lines = new ArrayList<>();
    if (!step.fresh().isEmpty()) {
      lines.add("! put in a fresh flap: " + String.join(", ", step.fresh()));
    }
    if (!step.toOpen().isEmpty()) {
      lines.add("open now: " + listed(step.toOpen()));
    }
    return lines;
  }

  /** What stands open already and can be seen: {@code lamp-1, gate 40 %}; "" where nothing does. */
  public static String open(Step step) {
    return listed(
        step.take().standing().stream()
            .filter(one -> one.open() > 0 && !step.toOpen().contains(one))
            .toList());
  }

  /** All of it, a line each. */
  public static List<String> all(Step step) {
    List<String> lines = new ArrayList<>(first(step));
    if (!open(step).isEmpty()) {
      lines.add((step.toOpen().isEmpty() ? "open: " : "still open: ") + open(step));
    }
    return lines;
  }

  /** What must be left alone over a night. */
  public static String night(Stretch stretch) {
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

  private static String listed(List<Standing> standing) {
    return standing.stream().map(StepWords::words).collect(Collectors.joining(", "));
  }

  private static String words(Standing one) {
    long percent = Math.round(100 * one.open());
    return percent >= 100 ? one.opening() : one.opening() + " " + percent + " %";
  }
}

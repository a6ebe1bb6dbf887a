package org.barsheet.exposure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;

/**
 * What is doubtful about the artwork itself: openings too small to work, or in each other's way.
 */
final class ArtworkFindings {

  /** Openings that share less than this, in squares, only touch: room for rounding. */
  private static final double TOUCH = 1e-6;

  private final Plan plan;
  private final Findings findings = new Findings();

  ArtworkFindings(Plan plan) {
    this.plan = plan;
  }

  /** All of them, worst first. */
  List<Finding> all() {
    plan.openings().forEach(this::addSmall);
    List<Opening> seen = new ArrayList<>();
    for (Opening opening : plan.openings()) {
      seen.forEach(earlier -> addOverlap(earlier, opening));
      seen.add(opening);
    }
    return findings.worstFirst();
  }

  private void addSmall(Opening opening) {
    double smallest = plan.artwork().smallestWorkableMillimetres();
    ModelScale scale = ModelScale.of(opening, plan.artwork());
    double shorter = scale.millimetres(Math.min(opening.rect().wide(), opening.rect().high()));
    if (shorter >= smallest) {
      return;
    }
    String sentence =
        opening.name()
            + " is "
            + millimetres(scale.millimetres(opening.rect().wide()))
            + " by "
            + millimetres(scale.millimetres(opening.rect().high()))
            + " mm on "
            + opening.model()
            + "; the smallest a hand can work is "
            + millimetres(smallest)
            + " mm";
    String remedy =
        "make it larger, or photograph it on a model enlarged "
            + enlargement(scale.enlarged() * smallest / shorter)
            + " times or more";
    findings.add(Severity.WARNING, Concerns.ANIMATOR, panels(opening), sentence, remedy);
  }

  private static String millimetres(double amount) {
    return rounded(amount, RoundingMode.HALF_UP);
  }

  private static String enlargement(double amount) {
    return rounded(amount, RoundingMode.CEILING);
  }

  private static String rounded(double amount, RoundingMode mode) {
    return BigDecimal.valueOf(amount).setScale(1, mode).stripTrailingZeros().toPlainString();
  }

  /** Where it moves, as the place of a finding: {@code panels 4, 21}. */
  private String panels(Opening opening) {
    List<String> names =
        plan.panels().stream()
            .filter(
                panel -> panel.reveals().stream().anyMatch(r -> r.opening().equals(opening.name())))
            .map(panel -> panel.name())
            .toList();
    return names.isEmpty()
        ? ""
        : (names.size() == 1 ? "panel " : "panels ")
            + names.stream().collect(Collectors.joining(", "));
  }

  private void addOverlap(Opening one, Opening other) {
    double across =
        shared(one.rect().left(), one.rect().wide(), other.rect().left(), other.rect().wide());
    double down =
        shared(one.rect().top(), one.rect().high(), other.rect().top(), other.rect().high());
    if (across > TOUCH && down > TOUCH) {
      String sentence =
          one.name()
              + " and "
              + other.name()
              + " share "
              + rounded(across, RoundingMode.HALF_UP)
              + " by "
              + rounded(down, RoundingMode.HALF_UP)
              + " squares of the artwork";
      findings.add(
          Severity.WARNING,
          Concerns.DIRECTOR,
          "",
          sentence,
          "move one of them, or make it smaller");
    }
  }

  /** Length that two stretches have in common; less than 0 where they lie apart. */
  private static double shared(double from, double length, double otherFrom, double otherLength) {
    return Math.min(from + length, otherFrom + otherLength) - Math.max(from, otherFrom);
  }
}

package org.barsheet.findings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.barsheet.artwork.ModelScale;
import org.barsheet.artwork.Rects;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;

/**
 * What is doubtful about the artwork itself: openings too small to work, or in each other's way.
 */
public final class ArtworkFindings {

  private final Plan plan;
  private final Findings findings = new Findings();

  public ArtworkFindings(Plan plan) {
    this.plan = plan;
  }

  /** All of them, worst first. */
  public List<Finding> all() {
    plan.workshop().openings().forEach(this::addSmall);
    List<Opening> seen = new ArrayList<>();
    for (Opening opening : plan.workshop().openings()) {
      seen.forEach(earlier -> addOverlap(earlier, opening));
      seen.add(opening);
    }
    return findings.worstFirst();
  }

  private void addSmall(Opening opening) {
    double smallest = plan.workshop().artwork().smallestWorkableMillimeters();
    ModelScale scale = ModelScale.of(opening, plan.workshop().artwork());
    double shorter = scale.millimeters(Math.min(opening.rect().width(), opening.rect().height()));
    if (shorter >= smallest) {
      return;
    }
    String sentence =
        opening.name()
            + " is "
            + millimeters(scale.millimeters(opening.rect().width()))
            + " by "
            + millimeters(scale.millimeters(opening.rect().height()))
            + " mm on "
            + opening.model()
            + "; the smallest workable size is "
            + millimeters(smallest)
            + " mm";
    String remedy =
        "make it larger, or photograph it on a model enlarged "
            + enlargement(scale.enlarged() * smallest / shorter)
            + " times or more";
    findings.add(
        new Finding(
            Severity.WARNING,
            Concerns.ANIMATOR,
            onlyPanel(opening),
            opening.name(),
            OptionalLong.empty(),
            sentence,
            remedy));
  }

  private static String millimeters(double amount) {
    return rounded(amount, RoundingMode.HALF_UP);
  }

  private static String enlargement(double amount) {
    return rounded(amount, RoundingMode.CEILING);
  }

  private static String rounded(double amount, RoundingMode mode) {
    return BigDecimal.valueOf(amount).setScale(1, mode).stripTrailingZeros().toPlainString();
  }

  /** The panel it moves in, or "" where it moves in none or in several. */
  private String onlyPanel(Opening opening) {
    List<String> names =
        plan.panels().stream()
            .filter(
                panel -> panel.reveals().stream().anyMatch(r -> r.opening().equals(opening.name())))
            .map(panel -> panel.name())
            .toList();
    return names.size() == 1 ? names.get(0) : "";
  }

  private void addOverlap(Opening one, Opening other) {
    if (Rects.meet(one.rect(), other.rect())) {
      String sentence =
          one.name()
              + " and "
              + other.name()
              + " overlap on "
              + rounded(Rects.sharedWide(one.rect(), other.rect()), RoundingMode.HALF_UP)
              + " by "
              + rounded(Rects.sharedHigh(one.rect(), other.rect()), RoundingMode.HALF_UP)
              + " squares of the artwork";
      findings.add(
          Severity.WARNING,
          Concerns.DIRECTOR,
          one.name(),
          sentence,
          "move one of them, or make it smaller");
    }
  }
}

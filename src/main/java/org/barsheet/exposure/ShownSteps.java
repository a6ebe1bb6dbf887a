package org.barsheet.exposure;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.barsheet.plan.Hand;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.TimingSheet;

/** Reveals that show some of their photographs only, and so jump further than the plan allows. */
public final class ShownSteps {

  /** Room for the last digits of doubles. */
  private static final double DUST = 1e-9;

  private final TimingSheet timing;
  private final Findings findings = new Findings();

  public ShownSteps(TimingSheet timing) {
    this.timing = timing;
  }

  /** All of them, worst first; none where the plan gives no largest step. */
  public List<Finding> of(List<PlannedReveal> reveals, Movements movements) {
    Hand hand = timing.plan().workshop().hand();
    for (PlannedReveal reveal : reveals) {
      Movement movement = movements.of(reveal.reveal());
      long shown = reveal.exposures().stream().map(Exposure::photograph).distinct().count();
      boolean all = shown >= movement.photographs().size();
      if (!all && hand.largestStep().isPresent()) {
        check(reveal, movement, hand.largestStep().get());
      }
    }
    return findings.worstFirst();
  }

  private void check(PlannedReveal reveal, Movement movement, double limit) {
    Photograph before = reveal.exposures().get(0).photograph();
    double worst = 0;
    String from = "";
    String to = "";
    for (Exposure exposure : reveal.exposures()) {
      double step = step(movement, before, exposure.photograph()).orElse(0);
      if (step > worst + DUST && exposure.frames().start() <= reveal.fullyOpenFrame()) {
        worst = step;
        from = before.name();
        to = exposure.photograph().name();
      }
      before = exposure.photograph();
    }
    if (worst > limit + DUST) {
      add(reveal, limit, String.format(Locale.ROOT, "%.1f mm from %s to %s", worst, from, to));
    }
  }

  private static OptionalDouble step(Movement movement, Photograph from, Photograph to) {
    return movement
        .measure()
        .edgeStep(
            movement.photographs().get(from.number()).measures().amount(),
            movement.photographs().get(to.number()).measures().amount());
  }

  private void add(PlannedReveal reveal, double limit, String jump) {
    findings.add(
        Severity.WARNING,
        Concerns.ANIMATOR,
        timing.shots().get(reveal.shot()),
        String.format(
            Locale.ROOT,
            "%s shows only some of its photographs and jumps %s; its limit is %.1f mm",
            reveal.opening().name(),
            jump,
            limit),
        "give it more frames, or its own movement with fewer photographs");
  }
}

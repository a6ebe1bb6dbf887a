package org.barsheet.plan.read;

import java.util.Optional;
import org.barsheet.plan.Measures;
import org.barsheet.plan.Tolerances;

/** Reads from how much on a photograph is told to be wrong. */
final class TolerancesSection {

  private TolerancesSection() {}

  static Tolerances read(Optional<PlanSection> section) {
    return section.map(TolerancesSection::tolerances).orElse(Tolerances.DEFAULT);
  }

  private static Tolerances tolerances(PlanSection section) {
    Tolerances usual = Tolerances.DEFAULT;
    return new Tolerances(
        section.read("camera", usual.camera(), text -> Measures.amount(text, "px", "0.25 px")),
        section.read("light", usual.light(), TolerancesSection::stops),
        section.read("color", usual.color(), TolerancesSection::stops),
        section.read("step", usual.step(), Measures::percent),
        section.read("shadow", usual.shadow(), TolerancesSection::stops),
        section.read("focus", usual.focus(), Measures::percent),
        section.read("clipped", usual.clipped(), Measures::percent),
        section.read("backing", usual.backing(), TolerancesSection::stops),
        section.read("spill", usual.spill(), Measures::percent));
  }

  private static double stops(String text) {
    return Measures.amount(text, "stop", "0.03 stops");
  }
}

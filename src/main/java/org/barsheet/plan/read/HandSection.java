package org.barsheet.plan.read;

import java.util.Optional;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Measures;

/** Reads what the animator's hand can set. */
final class HandSection {

  private HandSection() {}

  static Hand read(Optional<PlanSection> section) {
    return section.map(HandSection::hand).orElse(Hand.DEFAULT);
  }

  private static Hand hand(PlanSection section) {
    return new Hand(
        section.read("angle", Hand.DEFAULT.degrees(), Measures::degrees),
        section.read("step", Hand.DEFAULT.millimeters(), Measures::millimeters),
        section.read("light", Hand.DEFAULT.percent(), Measures::percent),
        section.read("largest-step", Measures::millimeters));
  }
}

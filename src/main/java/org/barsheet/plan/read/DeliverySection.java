package org.barsheet.plan.read;

import java.util.Optional;
import org.barsheet.plan.Delivery;
import org.barsheet.plan.WordChoice;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.Texts;

/** Reads where the performers send their recordings, and whom they ask. */
final class DeliverySection {

  private DeliverySection() {}

  static Delivery read(PlanSection plan) {
    String contact = plan.read("contact", "", Texts::plain);
    Optional<PlanSection> deliver = plan.section("deliver", PlanKeys.DELIVER);
    return new Delivery(
        contact,
        deliver.map(section -> section.read("to", "", Texts::plain)).orElse(""),
        deliver.flatMap(section -> section.read("deadline", ShootSection::day)),
        deliver.flatMap(section -> section.read("sound", WordChoice.YES_OR_NO)));
  }
}

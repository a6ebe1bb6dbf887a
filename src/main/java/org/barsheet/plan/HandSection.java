package org.barsheet.plan;

import java.util.Optional;

/** Reads what the animator's hand can set. */
final class HandSection {

  private HandSection() {}

  static Hand read(Optional<Section> section) {
    return section.map(HandSection::hand).orElse(Hand.DEFAULT);
  }

  private static Hand hand(Section section) {
    return new Hand(
        section.read("angle", Hand.DEFAULT.degrees(), Measures::degrees),
        section.read("way", Hand.DEFAULT.millimetres(), Measures::millimetres),
        section.read("light", Hand.DEFAULT.percent(), Measures::percent),
        section.read("largest-step", Measures::millimetres));
  }
}

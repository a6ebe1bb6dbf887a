package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;

/** What the cards have in the photographs that is to be painted out of them. */
final class Cleanup {

  private Cleanup() {}

  /** One sentence for each support, in the order they are used. */
  static List<String> of(List<CheckedPhotograph> photographs) {
    List<String> sentences = new ArrayList<>();
    List<CheckedPhotograph> together = new ArrayList<>();
    for (CheckedPhotograph one : photographs) {
      String holds = one.planned().heldBy();
      if (!together.isEmpty() && !together.get(0).planned().heldBy().equals(holds)) {
        sentences.add(sentence(together));
        together = new ArrayList<>();
      }
      if (!holds.isEmpty()) {
        together.add(one);
      }
    }
    if (!together.isEmpty()) {
      sentences.add(sentence(together));
    }
    return sentences;
  }

  private static String sentence(List<CheckedPhotograph> together) {
    return Range.of(together) + ": " + together.get(0).planned().heldBy();
  }
}

package org.barsheet.plan.edit;

import java.util.Comparator;
import java.util.List;

/**
 * A stretch of a text and what takes its place.
 *
 * @param from index of its first character
 * @param to index after its last character
 * @param text what stands there instead
 */
record Splice(int from, int to, String text) {

  /** The text with every stretch replaced; stretches do not overlap. */
  static String apply(String whole, List<Splice> splices) {
    StringBuilder spliced = new StringBuilder(whole.length());
    int at = 0;
    for (Splice splice :
        splices.stream()
            .sorted(Comparator.comparingInt(Splice::from).thenComparingInt(Splice::to))
            .toList()) {
      spliced.append(whole, at, splice.from()).append(splice.text());
      at = splice.to();
    }
    return spliced.append(whole, at, whole.length()).toString();
  }
}

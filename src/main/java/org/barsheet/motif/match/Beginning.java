package org.barsheet.motif.match;

import java.util.List;

/**
 * A pattern to look for, itself the beginning of a longer one or all of it.
 *
 * @param pattern what to look for
 * @param budget the most that a chain of it may cost, in thousandths of a note
 */
public record Beginning(Pattern pattern, int budget) {

  /** The budget that pays for all of these. */
  static int largestBudget(List<Beginning> beginnings) {
    return beginnings.stream().mapToInt(Beginning::budget).max().orElseThrow();
  }
}

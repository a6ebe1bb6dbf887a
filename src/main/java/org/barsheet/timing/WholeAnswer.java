package org.barsheet.timing;

import java.util.List;

/**
 * One whole answer of the aligner.
 *
 * @param more how much more it costs than the best, 0 for the best itself
 * @param shots in story order
 */
public record WholeAnswer(double more, List<Shot> shots) {

  public WholeAnswer {
    shots = List.copyOf(shots);
  }
}

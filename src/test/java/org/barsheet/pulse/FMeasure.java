package org.barsheet.pulse;

import java.util.List;

/** The F-measure of beat tracking: an estimate hits one beat within a tolerance, one to one. */
public final class FMeasure {

  private FMeasure() {}

  /** Twice the hits over all beats and estimates; both in order of time, in seconds. */
  public static double of(List<Double> beats, List<Double> estimates, double tolerance) {
    int hits = 0;
    int beat = 0;
    int estimate = 0;
    while (beat < beats.size() && estimate < estimates.size()) {
      double late = estimates.get(estimate) - beats.get(beat);
      if (Math.abs(late) <= tolerance) {
        hits++;
        beat++;
        estimate++;
      } else if (late < 0) {
        estimate++;
      } else {
        beat++;
      }
    }
    int all = beats.size() + estimates.size();
    return all == 0 ? 1 : 2.0 * hits / all;
  }
}

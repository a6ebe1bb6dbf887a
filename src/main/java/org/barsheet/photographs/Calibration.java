package org.barsheet.photographs;

import java.util.List;
import java.util.OptionalDouble;
import org.barsheet.pixels.Robust;

/**
 * Takes out of the measured openings what all of them are off by: the hole's edges are known to a
 * pixel or so, and the flap's edge looks as much wider or narrower in every photograph.
 */
final class Calibration {

  private static final int FEWEST = 5;
  private static final double MOST_PIXELS = 2;
  private static final double LEAST_OPEN = 0.02;

  private Calibration() {}

  static List<CheckedPhotograph> of(List<CheckedPhotograph> photographs, OpenMeasure open) {
    double[] off =
        photographs.stream()
            .filter(Calibration::tells)
            .mapToDouble(one -> one.uncovered().orElse(0) - one.plannedUncovered().orElse(0))
            .toArray();
    if (off.length < FEWEST || open.geometry().isEmpty()) {
      return photographs;
    }
    double most = MOST_PIXELS / open.geometry().get().travel();
    double common = Math.max(-most, Math.min(most, Robust.median(off)));
    return photographs.stream().map(one -> less(one, common)).toList();
  }

  private static boolean tells(CheckedPhotograph one) {
    return one.plannedUncovered().isPresent()
        && one.uncovered().orElse(0) > LEAST_OPEN
        && one.uncovered().orElse(0) < 1 - LEAST_OPEN;
  }

  private static CheckedPhotograph less(CheckedPhotograph one, double common) {
    return tells(one) ? one.opened(OptionalDouble.of(one.uncovered().getAsDouble() - common)) : one;
  }
}

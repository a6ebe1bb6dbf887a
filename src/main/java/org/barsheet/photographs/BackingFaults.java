package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.pixels.BackingMeter;
import org.barsheet.pixels.HoleMeter;
import org.barsheet.plan.Tolerances;

/** Finds backing that will not key well. */
final class BackingFaults {

  /** Nearer than this the tints of paper and backing blend (measured on rendered sequences). */
  private static final double TOO_NEAR = 0.08;

  private static final double LEAST_OPEN = 0.05;

  private BackingFaults() {}

  /**
   * What is to be told.
   *
   * @param indices of the photographs among those the meter knows
   */
  static List<PhotographFault> of(
      List<CheckedPhotograph> photographs, List<Integer> indices, HoleMeter meter, Tolerances may) {
    List<PhotographFault> faults = new ArrayList<>();
    BackingMeter backing = new BackingMeter(meter);
    List<CheckedPhotograph> uneven = new ArrayList<>();
    List<CheckedPhotograph> spilled = new ArrayList<>();
    double worst = 0;
    double most = 0;
    for (int i = 0; i < photographs.size(); i++) {
      if (meter.uncovered(indices.get(i)) > LEAST_OPEN) {
        double stops = backing.unevenness(indices.get(i));
        double spill = 100 * backing.spill(indices.get(i));
        if (Math.abs(stops) > may.backing()) {
          uneven.add(photographs.get(i));
          worst = Math.abs(stops) > Math.abs(worst) ? stops : worst;
        }
        if (spill > may.spill()) {
          spilled.add(photographs.get(i));
          most = Math.max(most, spill);
        }
      }
    }
    if (!uneven.isEmpty()) {
      faults.add(
          new PhotographFault(
              FaultKind.BACKING,
              Range.names(uneven),
              String.format(
                  Locale.ROOT,
                  "%s: the backing's worst patch is %.1f stops %s than its middle",
                  Range.of(uneven),
                  Math.abs(worst),
                  worst > 0 ? "brighter" : "darker"),
              "Light the backing by itself, and evenly."));
    }
    if (!spilled.isEmpty()) {
      faults.add(
          new PhotographFault(
              FaultKind.BACKING,
              Range.names(spilled),
              String.format(
                  Locale.ROOT,
                  "%s: up to %.0f %% of the backing's color lies on the paper beside the hole",
                  Range.of(spilled),
                  most),
              "Put the backing farther from the paper, or light it less."));
    }
    if (meter.isSeen() && meter.apart() < TOO_NEAR) {
      faults.add(
          new PhotographFault(
              FaultKind.BACKING,
              Range.names(photographs),
              "the backing's color is too near the paper's to key it out",
              "Use a backing of another color: see the sheet Artwork."));
    }
    return faults;
  }
}

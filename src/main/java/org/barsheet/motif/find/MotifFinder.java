package org.barsheet.motif.find;

import java.util.List;
import java.util.Optional;
import org.barsheet.motif.Motif;
import org.barsheet.motif.Occurrence;

/** Finds the returns of motifs in one score. */
public interface MotifFinder {

  /** Every return of a motif, in order of time, numbered over the certain and likely ones. */
  List<Occurrence> find(Motif motif);

  /**
   * The nearest that a motif comes among what begins between two ticks, whether it counts or not.
   *
   * @param fromTick first tick that counts
   * @param toTick first tick that no longer counts
   * @return empty if nothing like it begins there
   */
  Optional<NearMiss> nearest(Motif motif, long fromTick, long toTick);
}

package org.barsheet.shooting.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How far the flaps of the set stand open, as jobs are taken one after another. */
public final class Paper {

  private final Map<String, Double> open = new TreeMap<>();

  /** Flaps that stand further open than a job wants them: each has to be cut afresh for it. */
  public List<String> tooFarFor(Job job) {
    List<String> tooFar = new ArrayList<>();
    job.flaps()
        .forEach(
            (flap, level) -> {
              if (of(flap) > level.before()) {
                tooFar.add(flap);
              }
            });
    return tooFar;
  }

  /** Flaps that a hand has to open further before a job, fresh ones with them. */
  public List<String> toOpenFor(Job job) {
    List<String> toOpen = new ArrayList<>();
    job.flaps()
        .forEach(
            (flap, level) -> {
              double stands = of(flap) > level.before() ? 0 : of(flap);
              if (stands < level.before()) {
                toOpen.add(flap);
              }
            });
    return toOpen;
  }

  /** Leaves the paper as a job does. */
  public void take(Job job) {
    job.flaps().forEach((flap, level) -> open.put(flap, level.after()));
  }

  private double of(String flap) {
    return open.getOrDefault(flap, 0.0);
  }
}

package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.timing.Shot;

/** The reveals of one shot on their layers. */
public final class ShotReveals {

  private final Shot shot;
  private final List<RevealPlanner> planners;

  public ShotReveals(Shot shot, List<RevealPlanner> planners) {
    this.shot = shot;
    this.planners = planners;
  }

  /** Every reveal of the shot, in order of layer, then frame. */
  public List<PlannedReveal> all() {
    List<FrameSpan> parts = planners.stream().map(this::part).toList();
    List<Integer> layers = Layers.assign(parts);
    List<PlannedReveal> reveals = new ArrayList<>();
    for (int i = 0; i < planners.size(); i++) {
      reveals.add(planned(planners.get(i), parts.get(i), layers.get(i)));
    }
    reveals.sort(
        Comparator.comparingInt(PlannedReveal::layer)
            .thenComparingLong(PlannedReveal::firstGapFrame));
    return List.copyOf(reveals);
  }

  /**
   * The part of the shot a reveal fills: all of it, unless the same opening moves before or after
   * in the same shot; then the later movement takes over where it begins.
   */
  private FrameSpan part(RevealPlanner planner) {
    long start = shot.frames().start();
    long end = shot.frames().endExclusive();
    for (RevealPlanner other : planners) {
      if (other != planner && isSameOpening(other, planner)) {
        if (other.fullyOpenFrame() < planner.firstGapFrame()) {
          start = planner.firstGapFrame();
        } else if (planner.fullyOpenFrame() < other.firstGapFrame()) {
          end = Math.min(end, other.firstGapFrame());
        }
      }
    }
    return new FrameSpan(start, end);
  }

  private static boolean isSameOpening(RevealPlanner one, RevealPlanner other) {
    return one.room().reveal().opening().equals(other.room().reveal().opening());
  }

  private PlannedReveal planned(RevealPlanner planner, FrameSpan part, int layer) {
    return new PlannedReveal(
        shot.index(),
        planner.room().reveal(),
        planner.opening(),
        planner.movement().name(),
        layer,
        planner.room().accentFrame(),
        planner.room().landsFrame(),
        planner.firstGapFrame(),
        planner.halfOpenFrame(),
        planner.fullyOpenFrame(),
        planner.exposures(part),
        planner.squeeze());
  }
}

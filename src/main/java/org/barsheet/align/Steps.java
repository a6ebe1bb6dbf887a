package org.barsheet.align;

import java.util.Collections;
import java.util.List;
import org.barsheet.align.places.Costs;

/**
 * What the shots of a film cost from place to place.
 *
 * @param stages every panel with the places it can take
 * @param bounds what a film costs at least on either side of each panel's cut
 * @param filmFrames length of the film
 */
record Steps(List<Stage> stages, List<PanelBounds> bounds, long filmFrames) {

  Steps {
    stages = List.copyOf(stages);
    bounds = List.copyOf(bounds);
  }

  /** Steps of which nothing is known beforehand. */
  Steps(List<Stage> stages, long filmFrames) {
    this(stages, Collections.nCopies(stages.size(), PanelBounds.NONE), filmFrames);
  }

  Stage stage(int p) {
    return stages.get(p);
  }

  int panels() {
    return stages.size();
  }

  /** Cost of a panel's shot if the next panel takes a place, or {@link Costs#IMPOSSIBLE}. */
  long cost(int p, int i, int j) {
    Stage here = stages.get(p);
    Stage next = stages.get(p + 1);
    return next.canFollow(j, here, i) ? here.shotCost(i, next.cut(j)) : Costs.IMPOSSIBLE;
  }

  /** Cost of the last panel's shot. */
  long lastCost(int i) {
    return stages.get(panels() - 1).shotCost(i, filmFrames);
  }

  static long sum(long one, long other) {
    return Math.min(Costs.IMPOSSIBLE, one + other);
  }
}

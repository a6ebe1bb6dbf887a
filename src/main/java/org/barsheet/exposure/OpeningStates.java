package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.plan.Opening;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** How far each opening stands open in each shot. */
public final class OpeningStates {

  private OpeningStates() {}

  /** Every opening in every shot, in order of shot, then of the plan; all are closed at first. */
  public static List<OpeningState> of(TimingSheet timing, List<PlannedReveal> reveals) {
    Map<String, Double> open = new HashMap<>();
    List<OpeningState> states = new ArrayList<>();
    for (Shot shot : timing.shots()) {
      List<PlannedReveal> moving = OfShot.reveals(reveals, shot.index());
      for (Opening opening : timing.plan().workshop().openings()) {
        double before = open.getOrDefault(opening.name(), 0.0);
        OpeningState state = state(shot, opening.name(), before, moving);
        open.put(opening.name(), state.atLastFrame());
        states.add(state);
      }
    }
    return List.copyOf(states);
  }

  private static OpeningState state(
      Shot shot, String opening, double before, List<PlannedReveal> moving) {
    List<Exposure> shown = new ArrayList<>();
    for (PlannedReveal reveal : moving) {
      if (reveal.opening().name().equals(opening)) {
        shown.addAll(reveal.exposures());
      }
    }
    shown.sort((one, other) -> Long.compare(one.frames().start(), other.frames().start()));
    double first = shown.isEmpty() ? before : shown.get(0).progress();
    double last = shown.isEmpty() ? before : shown.get(shown.size() - 1).progress();
    return new OpeningState(opening, shot.index(), first, last);
  }
}

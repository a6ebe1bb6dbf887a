package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Opening.LiftsOff;

/** What to mind in a setup: the usual reminders that fit its work. They allow nothing. */
final class SetupCautions {

  /** A run of so many photographs without a rest is long for eyes and back. */
  static final int LONG_RUN = 40;

  static final String LONG =
      "A long run: rest your eyes and back; never leave a lamp on unattended.";

  static final String CABLES =
      "Tape cables down, keep exits clear; local codes and licensed trades come first.";

  private SetupCautions() {}

  static List<String> of(List<MovementWork> works, List<Step> steps, int photographs) {
    List<String> cautions = new ArrayList<>();
    boolean brightens = works.stream().anyMatch(w -> w.opening().motion() instanceof Brightens);
    boolean lifts = works.stream().anyMatch(w -> w.opening().motion() instanceof LiftsOff);
    if (brightens || works.stream().anyMatch(work -> !work.model().light().isEmpty())) {
      cautions.add(
          "Lamps stay hot: let them cool before you move or cover them; no paper on them.");
    }
    if (holds(works, "thread") || holds(works, "wire")) {
      cautions.add("Thread and wire under tension: protect your eyes, weight what holds them.");
    }
    boolean cut = steps.stream().anyMatch(step -> !step.fresh().isEmpty());
    if (lifts || cut) {
      cautions.add("Blades and glue for fresh pieces: cut away from your hand, air out the room.");
    }
    if (photographs > LONG_RUN) {
      cautions.add(LONG);
    }
    cautions.add(CABLES);
    return cautions;
  }

  private static boolean holds(List<MovementWork> works, String kind) {
    return works.stream()
        .map(MovementWork::opening)
        .map(Opening::heldBy)
        .flatMap(List::stream)
        .anyMatch(support -> support.kind().equals(kind));
  }
}

package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Photograph;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Slow;
import org.barsheet.timing.Shot;

/** The sample film's reveals, photograph by photograph, and who is seen behind them. */
final class SampleReveals {

  private SampleReveals() {}

  static PlannedReveal reveal(Plan plan, Shot shot, SampleFilm.Asked asked) {
    long lands = shot.frames().start() + asked.landsInShot();
    long firstGap = lands - (long) (asked.photographs() - 1) * asked.each();
    List<Exposure> exposures = new ArrayList<>();
    exposures.add(
        new Exposure(
            new FrameSpan(shot.frames().start(), firstGap), new Photograph(asked.opening(), 0), 0));
    for (int photograph = 1; photograph <= asked.photographs(); photograph++) {
      long from = firstGap + (long) (photograph - 1) * asked.each();
      long to =
          photograph == asked.photographs() ? shot.frames().endExclusive() : from + asked.each();
      exposures.add(
          new Exposure(
              new FrameSpan(from, to),
              new Photograph(asked.opening(), photograph),
              Slow.END.progress((double) photograph / asked.photographs())));
    }
    return new PlannedReveal(
        shot.index(),
        SamplePlan.reveal(asked),
        plan.workshop().opening(asked.opening()).orElseThrow(),
        asked.opening(),
        asked.layer(),
        lands,
        lands,
        firstGap,
        firstGap + (long) asked.photographs() * asked.each() / 3,
        lands,
        exposures,
        Optional.empty());
  }

  static List<Movement> movements(Plan plan, List<PlannedReveal> reveals) {
    return reveals.stream()
        .map(
            reveal ->
                Movement.of(
                    reveal.movement(),
                    reveal.opening(),
                    List.of(reveal.opening().name()),
                    plan.workshop().artwork(),
                    plan.workshop().hand(),
                    Slow.END,
                    Reveal.EvenIn.ANGLE,
                    reveal.reveal().photographs()))
        .toList();
  }

  static List<Appearance> appearances(Plan plan, List<Shot> shots, List<PlannedReveal> reveals) {
    return reveals.stream()
        .map(
            reveal ->
                new Appearance(
                    reveal.shot(),
                    plan.performers().get(0),
                    reveal.opening(),
                    new FrameSpan(
                        reveal.firstGapFrame(), shots.get(reveal.shot()).frames().endExclusive()),
                    0.8))
        .toList();
  }
}

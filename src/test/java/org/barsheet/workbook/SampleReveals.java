package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Picture;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Slow;
import org.barsheet.timing.Shot;

/** The sample film's reveals, picture by picture, and who is seen behind them. */
final class SampleReveals {

  private SampleReveals() {}

  static PlannedReveal reveal(Plan plan, Shot shot, SampleFilm.Asked asked) {
    long lands = shot.frames().start() + asked.landsInShot();
    long firstGap = lands - (long) (asked.pictures() - 1) * asked.each();
    List<Exposure> exposures = new ArrayList<>();
    exposures.add(
        new Exposure(
            new FrameSpan(shot.frames().start(), firstGap), new Picture(asked.opening(), 0), 0));
    for (int picture = 1; picture <= asked.pictures(); picture++) {
      long from = firstGap + (long) (picture - 1) * asked.each();
      long to = picture == asked.pictures() ? shot.frames().endExclusive() : from + asked.each();
      exposures.add(
          new Exposure(
              new FrameSpan(from, to),
              new Picture(asked.opening(), picture),
              Slow.END.progress((double) picture / asked.pictures())));
    }
    return new PlannedReveal(
        shot.index(),
        SampleFilm.reveal(asked),
        plan.workshop().opening(asked.opening()).orElseThrow(),
        asked.opening(),
        asked.layer(),
        lands,
        lands,
        firstGap,
        firstGap + (long) asked.pictures() * asked.each() / 3,
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
                    reveal.reveal().pictures()))
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

package org.barsheet.workbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.align.Alternative;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmClock;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Reveal;
import org.barsheet.pulse.Music;
import org.barsheet.timing.Shot;

/** The shots of a film made up for a test, and how its openings stand in them. */
final class SampleShots {

  private SampleShots() {}

  static Shot shot(
      int index, Panel panel, Cue cue, FrameSpan frames, Music music, FilmClock clock) {
    BigDecimal bars =
        BigDecimal.valueOf(frames.length())
            .divide(BigDecimal.valueOf(2.5 * clock.rate().nominal()), 2, RoundingMode.HALF_UP);
    boolean occurrence = cue.kind() == Cue.Kind.RETURN;
    return new Shot(
        index,
        panel,
        cue,
        frames,
        SampleCues.place(music, clock, frames.start()),
        bars,
        "glimmer, 4 bars",
        bars.toPlainString() + " bars",
        occurrence
            ? "lands on " + cue.title() + ", the only free certain one"
            : "free, on a bar line",
        index % 2 == 0
            ? Optional.empty()
            : Optional.of(new Alternative("bar 15 would make it 96 f longer", index * 0.02)),
        panel.reveals().stream()
            .map(reveal -> new Shot.Landing(room(reveal, cue), PhotographRun.asAsked(reveal)))
            .toList());
  }

  private static RevealRoom room(Reveal reveal, Cue cue) {
    return new RevealRoom(
        reveal,
        cue.accentFrame(),
        cue.accentFrame(),
        Optional.empty(),
        PhotographRun.waysToShow(reveal));
  }

  /** How far each opening is open in each shot: from the shot after its reveal on, wholly. */
  static List<OpeningState> states(
      List<String> openings, List<Shot> shots, List<PlannedReveal> reveals) {
    List<OpeningState> states = new ArrayList<>();
    for (Shot shot : shots) {
      for (String opening : openings) {
        states.add(
            new OpeningState(
                opening,
                shot.index(),
                openedBefore(reveals, opening, shot.index()),
                openedBefore(reveals, opening, shot.index() + 1)));
      }
    }
    return states;
  }

  private static double openedBefore(List<PlannedReveal> reveals, String opening, int shot) {
    boolean opened =
        reveals.stream()
            .anyMatch(reveal -> reveal.shot() < shot && reveal.opening().name().equals(opening));
    return opened ? 1 : 0;
  }
}

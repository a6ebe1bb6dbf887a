package org.barsheet.timing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.barsheet.align.Alternative;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;
import org.barsheet.plan.Panel;
import org.barsheet.score.BarBeat;

/**
 * A panel once it has frames.
 *
 * @param index place in the film, from 0
 * @param panel what it shows
 * @param cue the moment it sits on
 * @param frames its film frames
 * @param startsAt its first frame in bars (the music's start for frames before it)
 * @param bars how many bars long, to two decimals
 * @param asked what the plan asked for, in the plan's words: place and length
 * @param got what it got, in the same words: "3.25 bars"
 * @param reason why it is here, in words
 * @param alternative the second-best place, where there is one that costs not much more
 * @param reveals the landing of each of the panel's reveals, in the plan's order
 */
public record Shot(
    int index,
    Panel panel,
    Cue cue,
    FrameSpan frames,
    BarBeat startsAt,
    BigDecimal bars,
    String asked,
    String got,
    String reason,
    Optional<Alternative> alternative,
    List<Landing> reveals) {

  public Shot {
    reveals = List.copyOf(reveals);
  }

  /**
   * The frames a reveal lands on, and how it is shown.
   *
   * @param room what it needs
   * @param way how the reveal is shown: as asked, or squeezed
   */
  public record Landing(RevealRoom room, PhotographRun way) {}
}

package org.barsheet.align;

import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.MusicRuler;

/**
 * A moment a panel could sit on, before its cut is known.
 *
 * @param cue the moment
 * @param kind why it could
 * @param cost what choosing it costs, in millionths
 * @param afterCut the frame the panel before has to begin on, or {@link Candidate#ANY}
 * @param cutBefore the exact moment of that frame, where there is one
 */
record Origin(Cue cue, Candidate.Kind kind, long cost, long afterCut, Optional<Seconds> cutBefore) {

  /** An origin that does not hang on the panel before. */
  static Origin of(Cue cue, Candidate.Kind kind, long cost) {
    return new Origin(cue, kind, cost, Candidate.ANY, Optional.empty());
  }

  /** The origin that a candidate came from. */
  static Origin again(Candidate place, MusicRuler ruler) {
    Optional<Seconds> before =
        place.afterCut() == Candidate.ANY
            ? Optional.empty()
            : Optional.of(ruler.momentOf(place.afterCut()));
    long cost = place.isLate() ? place.cost() - Costs.LATE_CUT : place.cost();
    return new Origin(place.cue(), place.kind(), cost, place.afterCut(), before);
  }

  /** The same, to be taken only after a given start of the panel before. */
  Origin after(Candidate before) {
    return new Origin(cue, kind, cost, before.cut(), Optional.of(before.cutAt()));
  }
}

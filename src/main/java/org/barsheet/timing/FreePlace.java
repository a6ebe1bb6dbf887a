package org.barsheet.timing;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A beat that a panel without a place may sit on.
 *
 * @param cue the beat as a cue
 * @param kind how good a place it is
 * @param cost what sitting there costs, in millionths
 */
record FreePlace(Cue cue, Candidate.Kind kind, long cost) {

  /** Every felt beat within the film. */
  static List<FreePlace> of(MusicRuler ruler, Cues cues, long filmFrames) {
    Set<Long> marked = cues.marks().stream().map(Cue::frame).collect(Collectors.toSet());
    return ruler.beatsBetween(0, filmFrames - 1).stream()
        .map(beat -> of(beat, cues.free(beat.at()), marked.contains(beat.frame())))
        .toList();
  }

  private static FreePlace of(Beat beat, Cue cue, boolean marked) {
    if (marked) {
      return new FreePlace(cue, Candidate.Kind.FREE_ON_MARK, Costs.FREE_ON_MARK);
    }
    return beat.place().isDownbeat()
        ? new FreePlace(cue, Candidate.Kind.FREE_ON_BAR, Costs.FREE_ON_BAR)
        : new FreePlace(cue, Candidate.Kind.FREE_ON_BEAT, Costs.FREE_ON_BEAT);
  }

  /** A shot that begins on it, without reveals. */
  Candidate asCandidate() {
    return new Candidate(
        cue, cue.at(), cue.frame(), cue.frame(), List.of(), cost, Candidate.ANY, kind, cue.frame());
  }
}

package org.barsheet.align.places;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.cues.FilmBeat;
import org.barsheet.cues.MusicRuler;

/** The beats that a panel without a place may sit on. */
public final class FreePlaces {

  private FreePlaces() {}

  /** Every felt beat within the film, in order. */
  public static List<Candidate> of(MusicRuler ruler, Cues cues, long filmFrames) {
    Set<Long> marked = cues.marks().stream().map(Cue::frame).collect(Collectors.toSet());
    return ruler.beatsBetween(0, filmFrames - 1).stream()
        .map(beat -> of(beat, cues.free(beat.at()), marked.contains(beat.frame())))
        .toList();
  }

  private static Candidate of(FilmBeat beat, Cue cue, boolean marked) {
    if (marked) {
      return at(cue, Candidate.Kind.FREE_ON_MARK, Costs.FREE_ON_MARK);
    }
    return beat.place().isDownbeat()
        ? at(cue, Candidate.Kind.FREE_ON_BAR, Costs.FREE_ON_BAR)
        : at(cue, Candidate.Kind.FREE_ON_BEAT, Costs.FREE_ON_BEAT);
  }

  private static Candidate at(Cue cue, Candidate.Kind kind, long cost) {
    return new Candidate(
        cue,
        cue.at(),
        cue.frame(),
        cue.frame(),
        List.of(),
        cost,
        Candidate.ANY,
        kind,
        cue.frame(),
        Set.of());
  }
}

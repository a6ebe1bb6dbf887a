package org.barsheet.pulse;

import org.barsheet.score.BarGrid;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * A score together with the time and the bars that the film follows.
 *
 * @param score the notes
 * @param tempo exact time of every tick, from the music's start (tick 0)
 * @param bars the bars counted by
 * @param source where tempo and bars come from
 * @param evidence how true the written tempo looks
 * @param sentence which was used, why, and how sure that is
 */
public record Music(
    Score score,
    TempoMap tempo,
    BarGrid bars,
    Source source,
    TempoEvidence evidence,
    String sentence) {

  /** Where tempo and bars come from. */
  public enum Source {
    /** As written in the file. */
    WRITTEN,
    /** Found in the playing. */
    PLAYED,
    /** As written, bent to pinned times of a recording. */
    PINNED
  }
}

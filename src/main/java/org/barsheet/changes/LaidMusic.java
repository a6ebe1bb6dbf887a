package org.barsheet.changes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.revision.ScoreNotes;

/**
 * The music of a run, and what its plan meant by the places it asked for.
 *
 * @param notes of the score; nothing where a run did not keep them
 * @param cues in order of time
 * @param asks every place the plan asked for
 * @param called names of the performers seen in each panel
 */
public record LaidMusic(
    Optional<ScoreNotes> notes,
    List<LaidCue> cues,
    List<LaidAsk> asks,
    Map<String, List<String>> called) {

  public LaidMusic {
    cues = List.copyOf(cues);
    asks = List.copyOf(asks);
    called = Map.copyOf(called);
  }

  /** The cue of an id, if it has one. */
  Optional<LaidCue> cue(String id) {
    return cues.stream().filter(cue -> cue.id().equals(id)).findFirst();
  }
}

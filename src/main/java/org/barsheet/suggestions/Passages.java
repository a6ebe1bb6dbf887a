package org.barsheet.suggestions;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * Passages of a long score, spread evenly from its beginning to its end: enough to tell which of
 * two figures returns more often, without counting both throughout.
 */
final class Passages {

  /** A score of no more notes is taken whole. */
  static final int MOST_NOTES = 40_000;

  private static final int PASSAGES = 16;

  private Passages() {}

  /** The score itself if it is short enough, else sixteen passages of it with 40,000 notes. */
  static Score of(Score score) {
    List<Note> all = score.notes();
    if (all.size() <= MOST_NOTES) {
      return score;
    }
    int length = MOST_NOTES / PASSAGES;
    List<Note> some = new ArrayList<>(MOST_NOTES);
    for (int passage = 0; passage < PASSAGES; passage++) {
      int from = (int) ((long) passage * (all.size() - length) / (PASSAGES - 1));
      some.addAll(all.subList(from, from + length));
    }
    return score.withNotes(some);
  }
}

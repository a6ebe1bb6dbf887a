package org.barsheet.follow;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * Notes of a score that begin together.
 *
 * @param seconds when, as written
 * @param notes at least one
 */
record ScoreOnset(double seconds, List<Note> notes) {

  /** Notes that begin within this of the first are one onset. */
  private static final double TOGETHER = 0.012;

  /** All onsets of a score, in order. */
  static List<ScoreOnset> of(Score score) {
    List<ScoreOnset> onsets = new ArrayList<>();
    for (Note note : score.notes()) {
      double seconds = score.tempo().secondsAt(note.onTick()).toDouble();
      ScoreOnset last = onsets.isEmpty() ? null : onsets.get(onsets.size() - 1);
      if (last != null && seconds - last.seconds <= TOGETHER) {
        last.notes.add(note);
      } else {
        onsets.add(new ScoreOnset(seconds, new ArrayList<>(List.of(note))));
      }
    }
    return onsets;
  }

  /** How much of what is heard then begins: the root of the sum of squares of velocities. */
  double weight() {
    double square = 0;
    for (Note note : notes) {
      square += note.velocity() * note.velocity() / 16129.0;
    }
    return Math.sqrt(square);
  }
}

package org.barsheet.follow;

import org.barsheet.recording.PitchRises;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;

/** How much of a score's notes begins at each moment of a recording. */
final class NoteRises {

  /** Frames a second. */
  static final int RATE = PitchRises.RATE;

  /** Partials that are looked for, in semitones above a note. */
  private static final int[] PARTIALS = {0, 12, 19, 24, 28, 31};

  /** The strongest rise near an onset is sought this many frames on each side: half a second. */
  private static final int AROUND = RATE / 2;

  /** Rises weaker than this are weak wherever they are, in nepers of all partials together. */
  private static final float LEAST = 1;

  private final PitchRises rises;
  private final boolean[] drums;

  NoteRises(Score score, PitchRises rises) {
    this.rises = rises;
    this.drums = new boolean[score.parts().size()];
    for (Part part : score.parts()) {
      drums[part.index()] = part.drums();
    }
  }

  /** Whether a part has pitches to listen for. */
  boolean hears(int part) {
    return !drums[part];
  }

  /** The rise of a note's partials. */
  float of(Note note, int frame) {
    float sum = 0;
    for (int k = 0; k < PARTIALS.length; k++) {
      sum += rises.rise(note.pitch() + PARTIALS[k], frame) / (k + 1);
    }
    return sum;
  }

  /**
   * How much of an onset is heard in each frame near a time, as a share of the most within half a
   * second.
   *
   * @param reach frames on each side
   * @param lags of the parts, in seconds
   */
  float[] near(ScoreOnset onset, double seconds, int reach, double[] lags) {
    float[] sum = new float[2 * (AROUND + reach) + 1];
    for (Note note : onset.notes()) {
      if (hears(note.part())) {
        int first = (int) Math.round((seconds + lags[note.part()]) * RATE) - AROUND - reach;
        for (int i = 0; i < sum.length; i++) {
          sum[i] += of(note, first + i);
        }
      }
    }
    float most = LEAST;
    for (float value : sum) {
      most = Math.max(most, value);
    }
    float[] share = new float[2 * reach + 1];
    for (int i = 0; i < share.length; i++) {
      share[i] = sum[AROUND + i] / most;
    }
    return share;
  }
}

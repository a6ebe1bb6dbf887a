package org.barsheet.follow;

import org.barsheet.recording.Chromagram;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;

/** The chromagram that a score would have: its notes die away, and ring in a third partial. */
final class ScoreChroma {

  private static final double DYING_SECONDS = 1.5;
  private static final double FIFTH = 0.3;
  private static final double THIRD = 0.12;
  private static final float PLAYED = 1.0f;

  private ScoreChroma() {}

  /**
   * The score's chromagram in its own seconds.
   *
   * @param shift semitones it is moved up by
   */
  static Chromagram of(Score score, int shift) {
    double seconds = score.tempo().secondsAt(score.endTick()).toDouble();
    int frames = (int) (seconds * Chromagram.RATE) + 2;
    float[][] sounding = new float[frames][Chromagram.CLASSES];
    float[][] beginning = new float[frames][Chromagram.CLASSES];
    for (Note note : score.notes()) {
      Part part = score.parts().get(note.part());
      if (!part.drums()) {
        add(score, note, note.pitch() + shift, sounding, beginning);
      }
    }
    float[][] chroma = new float[frames][];
    for (int i = 0; i < frames; i++) {
      for (int k = 0; k < Chromagram.CLASSES; k++) {
        sounding[i][k] = (float) Math.log1p(5 * sounding[i][k]);
      }
      chroma[i] = Chromagram.normal(sounding[i]);
    }
    return new Chromagram(chroma, Chromagram.dyingAway(Chromagram.localShare(beginning)));
  }

  private static void add(
      Score score, Note note, int pitch, float[][] sounding, float[][] beginning) {
    double on = score.tempo().secondsAt(note.onTick()).toDouble() * Chromagram.RATE;
    double off = score.tempo().secondsAt(note.offTick()).toDouble() * Chromagram.RATE;
    float loud = PLAYED * note.velocity() / 127;
    int first = (int) Math.round(on);
    int last = (int) Math.max(first + 1, Math.round(off));
    for (int i = first; i < Math.min(last, sounding.length); i++) {
      float left = (float) (loud * StrictMath.exp(-(i - on) / Chromagram.RATE / DYING_SECONDS));
      ring(sounding[i], pitch, left);
    }
    if (first < beginning.length) {
      ring(beginning[first], pitch, loud);
    }
  }

  private static void ring(float[] row, int pitch, float strength) {
    row[Math.floorMod(pitch, 12)] += strength;
    row[Math.floorMod(pitch + 7, 12)] += (float) (FIFTH * strength);
    row[Math.floorMod(pitch + 4, 12)] += (float) (THIRD * strength);
  }
}

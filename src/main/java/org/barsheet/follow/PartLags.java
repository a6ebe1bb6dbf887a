package org.barsheet.follow;

import java.util.List;
import org.barsheet.score.Score;

/**
 * How late each part's notes rise in one recording. What is known of its instrument beforehand
 * counts for as much as it is certain; what all parts have in common is no lag but time.
 */
final class PartLags {

  private static final int BEFORE = 20;
  private static final int FRAMES = 61;
  private static final int FEWEST_NOTES = 8;
  private static final int MOST_NOTES = 100;

  /** How far one note's rise is off, as a standard deviation in seconds. */
  private static final double NOTE_SPREAD = 0.02;

  private final NoteRises rises;
  private final AttackLag[] known;

  PartLags(Score score, NoteRises rises) {
    this.rises = rises;
    this.known = score.parts().stream().map(AttackLag::of).toArray(AttackLag[]::new);
  }

  /** The lags before anything is heard, in seconds. */
  double[] known() {
    double[] lags = new double[known.length];
    for (int part = 0; part < lags.length; part++) {
      lags[part] = known[part].seconds();
    }
    return lags;
  }

  /** The lags as heard when the onsets are at these seconds. */
  double[] heard(List<ScoreOnset> onsets, double[] seconds) {
    double[][] profile = new double[known.length][FRAMES];
    int[] notes = new int[known.length];
    for (int i = 0; i < onsets.size(); i++) {
      int first = (int) Math.round(seconds[i] * NoteRises.RATE) - BEFORE;
      for (var note : onsets.get(i).notes()) {
        notes[note.part()]++;
        for (int d = 0; d < FRAMES; d++) {
          profile[note.part()][d] += rises.of(note, first + d);
        }
      }
    }
    return withoutCommon(profile, notes);
  }

  private double[] withoutCommon(double[][] profile, int[] notes) {
    double[] lags = known();
    double sum = 0;
    double weight = 1e-9;
    for (int part = 0; part < lags.length; part++) {
      if (notes[part] >= FEWEST_NOTES && rises.hears(part)) {
        double spread = known[part].spread();
        double change = trust(spread, notes[part]) * (peak(profile[part]) - lags[part]);
        double certain = Math.min(notes[part], MOST_NOTES) / (spread * spread);
        lags[part] += change;
        sum += certain * change;
        weight += certain;
      }
    }
    for (int part = 0; part < lags.length; part++) {
      lags[part] -= sum / weight;
    }
    return lags;
  }

  private static double trust(double spread, int notes) {
    double noise = NOTE_SPREAD * NOTE_SPREAD / notes;
    return spread * spread / (spread * spread + noise);
  }

  private static double peak(double[] profile) {
    int top = 1;
    for (int d = 1; d < FRAMES - 1; d++) {
      top = profile[d] > profile[top] ? d : top;
    }
    return (top + Parabola.top(profile[top - 1], profile[top], profile[top + 1]) - BEFORE)
        / NoteRises.RATE;
  }
}

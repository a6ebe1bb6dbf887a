package org.barsheet.pulse.steady;

import java.util.List;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.evidence.Playing.Stroke;
import org.barsheet.pulse.steady.Slots.Strokes;

/** Strokes of playing whose beat wanders, at the places they have among steady beats. */
public final class WarpedStrokes {

  private WarpedStrokes() {}

  /**
   * Strokes by beats.
   *
   * @param beats when each sounds, in order, at least two
   * @param beatSeconds how long a steady beat is
   */
  public static Strokes of(
      Playing playing, double[][] odds, List<Double> beats, double beatSeconds) {
    double[] places = new double[odds.length];
    int beat = 0;
    for (int i = 0; i < places.length; i++) {
      Stroke stroke = playing.strokes().get(i);
      while (beat + 2 < beats.size() && beats.get(beat + 1) <= stroke.seconds()) {
        beat++;
      }
      double length = beats.get(beat + 1) - beats.get(beat);
      places[i] = beatSeconds * (beat + (stroke.seconds() - beats.get(beat)) / length);
    }
    return new Strokes(places, odds, beatSeconds);
  }
}

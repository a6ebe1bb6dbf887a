package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barsheet.pulse.Playing.Stroke;

/**
 * Finds which of known beats begin bars: an exact search over bar sizes, which may change, and
 * places in the bar.
 */
final class DownbeatSearch {

  private static final double CHANGE_COST = 12;
  private static final double CUT_COST = 15;
  private static final double EVIDENCE_WEIGHT = 1.3;

  /** Bars of two are also halves of bars of four. */
  private static final double BAR_OF_TWO_COST = 0.05;

  private static final int NEIGHBOURS = 8;
  private static final double NEAR_SECONDS = 0.07;
  private static final double NEAR_SHARE = 0.15;
  private static final double[] WEIGHTS = {0.25, 0.4, 0.3, 0.35, 0.75, 0.75};

  private final double[] strengths;
  private final List<int[]> states = new ArrayList<>();

  /**
   * Downbeats among beats.
   *
   * @param places place in the bar of each beat, from 0
   * @param total how well they fit
   */
  record Found(List<Integer> places, double total) {}

  /**
   * A search.
   *
   * @param beats at least two
   * @param sizes felt beats that a bar may have
   */
  DownbeatSearch(Playing playing, List<Double> beats, List<Integer> sizes) {
    this.strengths = strengths(playing, beats);
    for (int size : sizes) {
      for (int place = 0; place < size; place++) {
        states.add(new int[] {size, place});
      }
    }
  }

  private static double[] strengths(Playing playing, List<Double> beats) {
    int count = beats.size();
    double[][] features = new double[WEIGHTS.length][count];
    double[][] harmony = new double[count][12];
    int from = 0;
    for (int i = 0; i < count; i++) {
      double length = i + 1 < count ? beats.get(i + 1) - beats.get(i) : length(beats, i);
      double near = Math.min(NEAR_SECONDS, length * NEAR_SHARE);
      double begin = beats.get(i) - near;
      while (from < playing.strokes().size() && playing.strokes().get(from).seconds() < begin) {
        from++;
      }
      describe(playing.strokes(), from, beats.get(i), length, near, features, harmony, i);
    }
    for (int i = 0; i < count; i++) {
      features[4][i] = change(harmony, i, 1);
      features[5][i] = change(harmony, i, 2);
    }
    return combine(features, count);
  }

  private static double length(List<Double> beats, int last) {
    return beats.get(last) - beats.get(last - 1);
  }

  private static void describe(
      List<Stroke> strokes,
      int from,
      double beat,
      double length,
      double near,
      double[][] features,
      double[][] harmony,
      int index) {
    int notes = 0;
    int lowest = Playing.NO_PITCH;
    for (int i = from; i < strokes.size(); i++) {
      Stroke stroke = strokes.get(i);
      if (stroke.seconds() >= beat + length - near) {
        break;
      }
      if (stroke.seconds() < beat + near) {
        notes += stroke.notes();
        lowest = Math.min(lowest, stroke.lowest());
        double longest = Math.min(4, stroke.longestSeconds() / length);
        features[1][index] = Math.max(features[1][index], longest);
        features[2][index] = Math.max(features[2][index], stroke.velocity());
      }
      Harmony.add(harmony[index], stroke.chroma());
    }
    features[0][index] = Math.log(1 + notes) / Math.log(2);
    features[3][index] = -Math.min(lowest, 90);
  }

  private static double change(double[][] harmony, int index, int beats) {
    double[] before = new double[12];
    double[] after = new double[12];
    for (int i = 0; i < beats; i++) {
      if (index + i < harmony.length) {
        Harmony.add(after, harmony[index + i]);
      }
      if (index - 1 - i >= 0) {
        Harmony.add(before, harmony[index - 1 - i]);
      }
    }
    return Harmony.change(before, after);
  }

  private static double[] combine(double[][] features, int count) {
    double[] strengths = new double[count];
    for (int i = 0; i < count; i++) {
      int from = Math.max(0, i - NEIGHBOURS);
      int to = Math.min(count, i + NEIGHBOURS + 1);
      for (int feature = 0; feature < WEIGHTS.length; feature++) {
        strengths[i] += WEIGHTS[feature] * Standing.of(features[feature], i, from, to);
      }
    }
    return strengths;
  }

  /** The best places of all. */
  Found search() {
    int beats = strengths.length;
    double[][] totals = new double[beats][states.size()];
    int[][] before = new int[beats][states.size()];
    for (int beat = 0; beat < beats; beat++) {
      for (int state = 0; state < states.size(); state++) {
        totals[beat][state] = evidence(beat, state);
        if (beat > 0) {
          before[beat][state] = bestBefore(totals[beat - 1], state);
          totals[beat][state] +=
              totals[beat - 1][before[beat][state]] - cost(before[beat][state], state);
        }
      }
    }
    return trace(totals, before);
  }

  private double evidence(int beat, int state) {
    int size = states.get(state)[0];
    double share = 1.0 / size;
    double place = states.get(state)[1] == 0 ? 1 - share : -share;
    return EVIDENCE_WEIGHT * strengths[beat] * place - (size == 2 ? BAR_OF_TWO_COST : 0);
  }

  private int bestBefore(double[] totals, int state) {
    int best = 0;
    for (int other = 1; other < totals.length; other++) {
      if (totals[other] - cost(other, state) > totals[best] - cost(best, state)) {
        best = other;
      }
    }
    return best;
  }

  private double cost(int before, int state) {
    int[] from = states.get(before);
    int[] to = states.get(state);
    if (to[1] > 0) {
      return from[0] == to[0] && from[1] == to[1] - 1 ? 0 : Double.POSITIVE_INFINITY;
    }
    boolean whole = from[1] == from[0] - 1;
    if (!whole) {
      return CUT_COST;
    }
    return from[0] == to[0] ? 0 : CHANGE_COST;
  }

  private Found trace(double[][] totals, int[][] before) {
    int beats = totals.length;
    int state = 0;
    for (int other = 1; other < states.size(); other++) {
      if (totals[beats - 1][other] > totals[beats - 1][state]) {
        state = other;
      }
    }
    double total = totals[beats - 1][state];
    List<Integer> places = new ArrayList<>();
    for (int beat = beats - 1; beat >= 0; beat--) {
      places.add(states.get(state)[1]);
      state = before[beat][state];
    }
    Collections.reverse(places);
    return new Found(places, total);
  }

  /**
   * How well each place of the first beat fits if bars of one size never change.
   *
   * @return totals by the place of the first beat
   */
  double[] steadyTotals(int size) {
    double[] totals = new double[size];
    for (int first = 0; first < size; first++) {
      for (int beat = 0; beat < strengths.length; beat++) {
        double share = 1.0 / size;
        boolean down = (first + beat) % size == 0;
        totals[first] += EVIDENCE_WEIGHT * strengths[beat] * (down ? 1 - share : -share);
      }
    }
    return totals;
  }
}

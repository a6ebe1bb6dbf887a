package org.barsheet.pulse.free;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barsheet.pulse.evidence.DownbeatStrength;
import org.barsheet.pulse.evidence.Playing;

/**
 * Finds which of known beats begin bars: an exact search over bar sizes, which may change, and
 * places in the bar.
 */
public final class DownbeatSearch {

  private static final double CHANGE_COST = 12;
  private static final double CUT_COST = 15;
  private static final double EVIDENCE_WEIGHT = 1.3;

  /** Bars of two are also halves of bars of four. */
  private static final double BAR_OF_TWO_COST = 0.05;

  private final double[] strengths;
  private final List<int[]> states = new ArrayList<>();

  /**
   * Downbeats among beats.
   *
   * @param places place in the bar of each beat, from 0
   * @param total how well they fit
   */
  public record Found(List<Integer> places, double total) {}

  /**
   * A search.
   *
   * @param beats at least two
   * @param sizes felt beats that a bar may have
   */
  public DownbeatSearch(Playing playing, List<Double> beats, List<Integer> sizes) {
    this.strengths = DownbeatStrength.of(playing, beats);
    for (int size : sizes) {
      for (int place = 0; place < size; place++) {
        states.add(new int[] {size, place});
      }
    }
  }

  /** The best places of all. */
  public Found search() {
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
  public double[] steadyTotals(int size) {
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

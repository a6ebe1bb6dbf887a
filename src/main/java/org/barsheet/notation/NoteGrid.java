package org.barsheet.notation;

import java.util.Arrays;

/**
 * The divisions of a quarter note that a player meant, learned from where the notes lie: how often
 * each division comes, how far notes stray from it, and whether all of them come early or late.
 *
 * <p>A mixture of normal distributions, one to a division, with one spread, fitted by expectation
 * and maximization (Dempster, Laird and Rubin 1977). The more a division is used, the further from
 * it a note may lie and still be meant for it.
 */
final class NoteGrid {

  private static final double[] DIVISIONS = {
    0, 1 / 8., 1 / 6., 1 / 4., 1 / 3., 3 / 8., 1 / 2., 5 / 8., 2 / 3., 3 / 4., 5 / 6., 7 / 8.
  };

  /** What is taken for granted before any note is heard, in notes. */
  private static final double[] USUAL = {12, 0.5, 0.2, 4, 1, 0.5, 8, 0.5, 1, 4, 0.2, 0.5};

  private static final double FIRST_SPREAD = 0.03;
  private static final double LEAST_SPREAD = 0.004;
  private static final double MOST_SPREAD = 0.06;
  private static final int TURNS = 8;

  private final double[] weights = new double[DIVISIONS.length];
  private double spread = FIRST_SPREAD;
  private double shift;

  private NoteGrid() {
    double all = Arrays.stream(USUAL).sum();
    Arrays.setAll(weights, k -> USUAL[k] / all);
  }

  /**
   * Learns from some notes.
   *
   * @param places of their onsets, in quarter notes
   */
  static NoteGrid of(double[] places) {
    NoteGrid grid = new NoteGrid();
    for (int turn = 0; turn < TURNS && places.length > 0; turn++) {
      grid.learn(places);
    }
    return grid;
  }

  private void learn(double[] places) {
    double[] counts = USUAL.clone();
    double off = 0;
    double squares = 0;
    double[] shares = new double[DIVISIONS.length];
    for (double place : places) {
      shares(place, shares);
      for (int k = 0; k < shares.length; k++) {
        double distance = distance(place, k);
        counts[k] += shares[k];
        off += shares[k] * (distance + shift);
        squares += shares[k] * distance * distance;
      }
    }
    double all = Arrays.stream(counts).sum();
    Arrays.setAll(weights, k -> counts[k] / all);
    shift = off / places.length;
    spread = Math.max(LEAST_SPREAD, Math.min(MOST_SPREAD, Math.sqrt(squares / places.length)));
  }

  /** How likely it is that a note at a place was meant for each division, together 1. */
  private void shares(double place, double[] shares) {
    double sum = 0;
    for (int k = 0; k < shares.length; k++) {
      double off = distance(place, k) / spread;
      shares[k] = weights[k] * Math.exp(-off * off / 2);
      sum += shares[k];
    }
    for (int k = 0; k < shares.length; k++) {
      shares[k] = sum > 0 ? shares[k] / sum : 0;
    }
  }

  /** How far after a division a place lies, the nearest way round the quarter note. */
  private double distance(double place, int k) {
    double off = place - shift - DIVISIONS[k];
    return off - Math.rint(off);
  }

  /** The division that a note at a place was meant for, in quarter notes. */
  double meant(double place) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < DIVISIONS.length; k++) {
      double off = distance(place, k) / spread;
      double cost = off * off / 2 - Math.log(weights[k]);
      if (cost < least) {
        least = cost;
        best = k;
      }
    }
    return Math.rint(place - shift - distance(place, best) - DIVISIONS[best]) + DIVISIONS[best];
  }

  /** How far notes stray from their divisions, one standard deviation, in quarter notes. */
  double spread() {
    return spread;
  }
}

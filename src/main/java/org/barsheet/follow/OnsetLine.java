package org.barsheet.follow;

import java.util.List;

/**
 * The line through a recording along which most of a score's onsets are heard and which bends least
 * (A. J. Viterbi, "Error bounds for convolutional codes", IEEE Transactions on Information Theory
 * 13, 1967).
 */
final class OnsetLine {

  private final double[] seconds;
  private final double[] clarity;

  /**
   * A line.
   *
   * @param seconds of each onset
   * @param clarity how much of each is heard there, 0 to 1
   */
  OnsetLine(double[] seconds, double[] clarity) {
    this.seconds = seconds;
    this.clarity = clarity;
  }

  double[] seconds() {
    return seconds;
  }

  double[] clarity() {
    return clarity;
  }

  /** Frames looked at on each side of where an onset is expected: 0.2 s. */
  private static final int REACH = 40;

  private static final int STATES = 2 * REACH + 1;

  /** What an onset that is heard whole is worth, against bending by one standard deviation: 0.5. */
  private static final double WORTH = 3;

  /** No bend costs more. */
  private static final double MOST_BEND = 8;

  /** The onset itself is where the rise is greatest this near to the line, in frames. */
  private static final int NEAR = 4;

  /**
   * The best line.
   *
   * @param expected seconds near which each onset is
   * @param segments runs of onsets between which the line is free
   * @param walk how far it strays in a second, as a standard deviation in seconds
   */
  static OnsetLine of(
      List<ScoreOnset> onsets,
      NoteRises rises,
      double[] lags,
      double[] expected,
      int[] segments,
      double walk) {
    int count = expected.length;
    float[][] heard = new float[count][];
    byte[][] from = new byte[count][STATES];
    double[] best = new double[STATES];
    for (int i = 0; i < count; i++) {
      heard[i] = rises.near(onsets.get(i), expected[i], REACH, lags);
      boolean free = i == 0 || segments[i] != segments[i - 1];
      double passed = free ? 1 : Math.max(0.02, expected[i] - expected[i - 1]);
      double unit = 1 / (NoteRises.RATE * walk * Math.sqrt(passed));
      best = step(best, heard[i], from[i], free ? 0 : unit);
    }
    return traced(expected, heard, from, best);
  }

  private static double[] step(double[] before, float[] heard, byte[] from, double unit) {
    double[] now = new double[STATES];
    for (int s = 0; s < STATES; s++) {
      double most = Double.NEGATIVE_INFINITY;
      for (int r = 0; r < STATES; r++) {
        double bend = (s - r) * unit;
        double value = before[r] - Math.min(bend * bend / 2, MOST_BEND);
        if (value > most) {
          most = value;
          from[s] = (byte) r;
        }
      }
      now[s] = most + WORTH * heard[s];
    }
    return now;
  }

  private static OnsetLine traced(
      double[] expected, float[][] heard, byte[][] from, double[] best) {
    int state = 0;
    for (int s = 0; s < STATES; s++) {
      state = best[s] > best[state] ? s : state;
    }
    double[] seconds = new double[expected.length];
    double[] clarity = new double[expected.length];
    for (int i = expected.length - 1; i >= 0; i--) {
      int top = top(heard[i], state);
      double part =
          top == 0 || top == STATES - 1
              ? 0
              : Parabola.top(heard[i][top - 1], heard[i][top], heard[i][top + 1]);
      seconds[i] = expected[i] + (top - REACH + part) / NoteRises.RATE;
      clarity[i] = heard[i][top];
      state = from[i][state];
    }
    return new OnsetLine(seconds, clarity);
  }

  private static int top(float[] heard, int state) {
    int top = state;
    for (int s = Math.max(0, state - NEAR); s <= Math.min(STATES - 1, state + NEAR); s++) {
      top = heard[s] > heard[top] ? s : top;
    }
    return top;
  }
}

package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Which photograph is which of the planned ones, by how far the opening stands open in it: the
 * pairing in order with the least cost (dynamic programming), where leaving out one of either side
 * costs as much as a bad fit.
 */
final class Pairing {

  private static final double MOST_MISFIT = 30;
  private static final double LEFT_OUT = 18;

  /** An exchange of two must explain this much to be believed. */
  private static final double EXCHANGE = 20;

  private static final double FITS = 6;

  private final double[] measured;
  private final double[] planned;
  private final double spread;

  /**
   * What is to be paired.
   *
   * @param measured how much is uncovered in each photograph
   * @param planned how much is to be uncovered in each planned one
   * @param spread by which a measure may be off, as a standard deviation
   */
  Pairing(double[] measured, double[] planned, double spread) {
    this.measured = measured.clone();
    this.planned = planned.clone();
    this.spread = spread;
  }

  /**
   * A pairing.
   *
   * @param planned for each photograph the place of its planned one, or -1 for one too many
   * @param missing places of planned ones that no photograph shows
   * @param exchanged places of two photographs that seem to have changed places, or none
   */
  record Paired(List<Integer> planned, List<Integer> missing, List<Integer> exchanged) {

    boolean isPlain() {
      return missing.isEmpty() && exchanged.isEmpty() && !planned.contains(-1);
    }

    /** One after another, without a look at them. */
    static Paired inOrder(int count, int planned) {
      List<Integer> places = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        places.add(i < planned ? i : -1);
      }
      List<Integer> missing = new ArrayList<>();
      for (int i = count; i < planned; i++) {
        missing.add(i);
      }
      return new Paired(places, missing, List.of());
    }
  }

  Paired best() {
    return measured.length == planned.length ? exchanged() : inOrder();
  }

  private double misfit(int photograph, int place) {
    double off = (measured[photograph] - planned[place]) / spread;
    return Math.min(MOST_MISFIT, off * off);
  }

  /** As many as planned: in order, but for two that fit each other's place much better. */
  private Paired exchanged() {
    Paired plain = Paired.inOrder(measured.length, planned.length);
    double best = EXCHANGE;
    List<Integer> two = List.of();
    for (int one = 0; one < measured.length; one++) {
      for (int other = one + 1; other < measured.length; other++) {
        double gain =
            misfit(one, one) + misfit(other, other) - misfit(one, other) - misfit(other, one);
        boolean fits = misfit(one, other) < FITS && misfit(other, one) < FITS;
        if (fits && gain > best) {
          best = gain;
          two = List.of(one, other);
        }
      }
    }
    if (two.isEmpty()) {
      return plain;
    }
    List<Integer> places = new ArrayList<>(plain.planned());
    Collections.swap(places, two.get(0), two.get(1));
    return new Paired(places, List.of(), two);
  }

  /** Least cost of pairing the first photographs with the first planned ones. */
  private Paired inOrder() {
    int rows = measured.length;
    int columns = planned.length;
    double[][] cost = new double[rows + 1][columns + 1];
    for (double[] row : cost) {
      Arrays.fill(row, Double.POSITIVE_INFINITY);
    }
    cost[0][0] = 0;
    for (int i = 0; i <= rows; i++) {
      for (int j = 0; j <= columns; j++) {
        if (i > 0) {
          cost[i][j] = Math.min(cost[i][j], cost[i - 1][j] + LEFT_OUT);
        }
        if (j > 0) {
          cost[i][j] = Math.min(cost[i][j], cost[i][j - 1] + LEFT_OUT);
        }
        if (i > 0 && j > 0) {
          cost[i][j] = Math.min(cost[i][j], cost[i - 1][j - 1] + misfit(i - 1, j - 1));
        }
      }
    }
    return traced(cost);
  }

  /** Back from the end: of two alike the one taken last is kept. */
  private Paired traced(double[][] cost) {
    Integer[] places = new Integer[measured.length];
    List<Integer> missing = new ArrayList<>();
    int i = measured.length;
    int j = planned.length;
    while (i > 0 || j > 0) {
      double here = cost[i][j] - 1e-9;
      if (i > 0 && j > 0 && cost[i - 1][j - 1] + misfit(i - 1, j - 1) - 2e-9 <= here) {
        places[i - 1] = j - 1;
        i--;
        j--;
      } else if (i > 0 && cost[i - 1][j] + LEFT_OUT - 2e-9 <= here) {
        places[i - 1] = -1;
        i--;
      } else {
        missing.add(j - 1);
        j--;
      }
    }
    Collections.reverse(missing);
    return new Paired(List.of(places), missing, List.of());
  }
}

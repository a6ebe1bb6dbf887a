package org.barsheet.pulse.steady;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.barsheet.pulse.evidence.MeterPattern;

/**
 * Finds the bars on a grid of slots: an exact search (dynamic programming) over meters, which may
 * change at every bar line, and over where the first bar begins, perhaps before the first stroke.
 */
public final class MeterSearch {

  private static final double CHANGE_COST = 10;
  private static final double PICKUP_COST = 1;
  private static final double UNREACHED = Double.NEGATIVE_INFINITY;
  private static final int NONE = -1;

  private final Slots slots;
  private final List<MeterPattern> meters;
  private final int before;
  private final double[][] totals;
  private final int[][] meterBefore;

  /**
   * A bar.
   *
   * @param slot where it begins, below 0 if before the first stroke
   */
  public record FoundBar(int slot, MeterPattern meter) {}

  /**
   * What was found.
   *
   * @param bars in order, from the one the first stroke lies in to the one the last lies in
   * @param total how well they fit
   */
  record Found(List<FoundBar> bars, double total) {}

  MeterSearch(Slots slots, List<MeterPattern> meters) {
    this.slots = slots;
    this.meters = meters;
    this.before = meters.stream().mapToInt(MeterPattern::length).max().orElseThrow();
    int lines = slots.count() + 2 * before + 1;
    this.totals = new double[meters.size()][lines];
    this.meterBefore = new int[meters.size()][lines];
    for (int meter = 0; meter < meters.size(); meter++) {
      Arrays.fill(totals[meter], UNREACHED);
      Arrays.fill(meterBefore[meter], NONE);
    }
  }

  /** What a meter that is seldom met must bring with it. */
  private static double rarity(MeterPattern meter) {
    return switch (meter.meter().toString()) {
      case "12/8" -> 1;
      case "9/8" -> 3;
      case "5/4", "7/8" -> 8;
      case "5/8" -> 10;
      default -> 0;
    };
  }

  /** And for each of its slots. */
  private static double rarityOfSlot(MeterPattern meter) {
    return meter.isUneven() ? 0.03 : meter.meter().numerator() == 9 ? 0.01 : 0;
  }

  /** The best bars of all. */
  Found search() {
    double[][] bars = new double[meters.size()][];
    for (int meter = 0; meter < bars.length; meter++) {
      bars[meter] = fits(meters.get(meter));
    }
    for (int line = 0; line < slots.count() + before; line++) {
      int best = bestAt(line);
      for (int meter = 0; meter < bars.length; meter++) {
        addBar(line, meter, best, bars[meter][line]);
      }
    }
    return trace();
  }

  /** How well a bar of a meter fits that begins at each line. */
  private double[] fits(MeterPattern meter) {
    int[] places = meter.places();
    double[] fits = new double[slots.count() + before];
    for (int line = 0; line < fits.length; line++) {
      double fit = -rarityOfSlot(meter) * places.length;
      for (int i = 0; i < places.length; i++) {
        fit += slots.fit(line - before + i, places[i]);
      }
      fits[line] = fit;
    }
    return fits;
  }

  private int bestAt(int line) {
    int best = 0;
    for (int meter = 1; meter < totals.length; meter++) {
      if (totals[meter][line] > totals[best][line]) {
        best = meter;
      }
    }
    return best;
  }

  private void addBar(int line, int meter, int best, double fit) {
    int length = meters.get(meter).length();
    double total = totals[meter][line];
    int from = meter;
    double changed = totals[best][line] - CHANGE_COST - rarity(meters.get(meter));
    if (changed > total) {
      total = changed;
      from = best;
    }
    if (line <= before && line + length > before) {
      double first = -rarity(meters.get(meter)) - (line < before ? PICKUP_COST : 0);
      if (first > total) {
        total = first;
        from = NONE;
      }
    }
    if (total != UNREACHED && total + fit > totals[meter][line + length]) {
      totals[meter][line + length] = total + fit;
      meterBefore[meter][line + length] = from;
    }
  }

  private Found trace() {
    int line = slots.count() + before;
    int meter = bestAt(line);
    for (int end = line + 1; end < totals[0].length; end++) {
      int best = bestAt(end);
      if (totals[best][end] > totals[meter][line]) {
        line = end;
        meter = best;
      }
    }
    double total = totals[meter][line] + slots.beside();
    List<FoundBar> bars = new ArrayList<>();
    while (meter != NONE) {
      int from = meterBefore[meter][line];
      line -= meters.get(meter).length();
      bars.add(new FoundBar(line - before, meters.get(meter)));
      meter = from;
    }
    Collections.reverse(bars);
    return new Found(bars, total);
  }
}

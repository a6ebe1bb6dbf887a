package org.barsheet.pulse.evidence;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * How much onsets gather on few places within the quarter note, against what chance would give.
 *
 * <p>Music that was written sits on a handful of places (ticks modulo the quarter note); playing
 * that ignored the file's tempo sits anywhere.
 */
public final class GridConcentration {

  /** Fewest onsets that can be judged. */
  public static final int FEWEST_ONSETS = 24;

  private static final int PLACES = 16;
  private static final int CHANCE_RUNS = 3;
  private static final long SEED = 1;

  /** Grids of 1, 2, 3, 4 and 6 places to the quarter note. */
  private static final int[] GRIDS = {1, 2, 3, 4, 6};

  private GridConcentration() {}

  /**
   * Share of onsets in the 16 commonest places, 0 (as chance has it) to 1 (all of them).
   *
   * @param onsets at least {@link #FEWEST_ONSETS} different ticks of the file
   * @param ticksPerQuarter of the file
   */
  public static double score(long[] onsets, int ticksPerQuarter) {
    int[] places = new int[onsets.length];
    for (int i = 0; i < onsets.length; i++) {
      places[i] = (int) (onsets[i] % ticksPerQuarter);
    }
    double chance = chance(onsets.length, ticksPerQuarter);
    double share = commonestShare(places);
    return chance > 0.99 ? 1 : Math.max(0, (share - chance) / (1 - chance));
  }

  private static double chance(int count, int ticksPerQuarter) {
    SplittableRandom random = new SplittableRandom(SEED);
    double sum = 0;
    for (int run = 0; run < CHANCE_RUNS; run++) {
      int[] places = new int[count];
      for (int i = 0; i < count; i++) {
        places[i] = random.nextInt(ticksPerQuarter);
      }
      sum += commonestShare(places);
    }
    return sum / CHANCE_RUNS;
  }

  private static double commonestShare(int[] places) {
    Arrays.sort(places);
    int[] counts = new int[places.length];
    int kinds = 0;
    for (int i = 0; i < places.length; i++) {
      if (i > 0 && places[i] != places[i - 1]) {
        kinds++;
      }
      counts[kinds]++;
    }
    Arrays.sort(counts);
    long sum = 0;
    for (int i = counts.length - 1; i >= Math.max(0, counts.length - PLACES); i--) {
      sum += counts[i];
    }
    return (double) sum / places.length;
  }

  /**
   * How closely onsets keep to a regular grid of the quarter note although none is exactly on it: 0
   * (anywhere) to 1 (exactly), the mean cosine of their places on the circle of one grid step, for
   * the best of a few grids.
   */
  public static double closeness(long[] onsets, int ticksPerQuarter) {
    double best = 0;
    for (int grid : GRIDS) {
      double sum = 0;
      for (long onset : onsets) {
        sum += Math.cos(2 * Math.PI * grid * (onset % ticksPerQuarter) / ticksPerQuarter);
      }
      best = Math.max(best, sum / onsets.length);
    }
    return best;
  }
}

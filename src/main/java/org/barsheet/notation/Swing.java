package org.barsheet.notation;

import java.util.Arrays;
import java.util.Optional;

/**
 * Swung eighths: the second of two begins later than half a quarter note and is written straight.
 *
 * <p>What lies within either of the two is stretched along with it, as in swung sixteenths.
 *
 * @param ratio where the second eighth begins, as a share of the quarter note, 0.54 to 0.7
 */
record Swing(double ratio) {

  /** Where a swung eighth may begin; later ones are dotted rhythms. */
  private static final double EARLIEST = 0.54;

  private static final double LATEST = 0.7;

  private static final double NEAR = 0.04;
  private static final int FEWEST = 8;

  /** Swung eighths are so many times as frequent as straight ones. */
  private static final int OVER_STRAIGHT = 4;

  /** And so many times as frequent as first thirds, which triplets have and swing has not. */
  private static final int OVER_THIRDS = 3;

  /**
   * The swing of some notes.
   *
   * @param places of their onsets, in quarter notes
   * @return empty if they are straight, in triplets, or too few to tell
   */
  static Optional<Swing> of(double[] places) {
    double[] late = within(places, EARLIEST, LATEST);
    int straight = within(places, 0.5 - NEAR, EARLIEST).length;
    if (late.length < FEWEST || late.length < OVER_STRAIGHT * straight) {
      return Optional.empty();
    }
    double ratio = late[late.length / 2];
    int first = within(places, ratio / 2 - NEAR, ratio / 2 + NEAR).length;
    int last = within(places, (1 + ratio) / 2 - NEAR, (1 + ratio) / 2 + NEAR).length;
    boolean triplets = late.length < OVER_THIRDS * (first - last);
    return triplets ? Optional.empty() : Optional.of(new Swing(ratio));
  }

  /** Whether some notes are no straighter than swung, be they ever so few. */
  static boolean mayShare(double[] places) {
    int late = within(places, EARLIEST, LATEST).length;
    return late >= within(places, 0.5 - NEAR, EARLIEST).length;
  }

  /** The shares of a quarter note from one to before another, in order. */
  private static double[] within(double[] places, double from, double to) {
    return Arrays.stream(places)
        .map(place -> place - Math.floor(place))
        .filter(share -> share >= from && share < to)
        .sorted()
        .toArray();
  }

  /** Where it is written what is played at a place, in quarter notes. */
  double written(double played) {
    return moved(played, ratio, 0.5);
  }

  /** Where it is played what is written at a place, in quarter notes. */
  double played(double written) {
    return moved(written, 0.5, ratio);
  }

  private static double moved(double place, double from, double to) {
    double beat = Math.floor(place);
    double share = place - beat;
    double moved = share < from ? share / from * to : 1 - (1 - share) / (1 - from) * (1 - to);
    return beat + moved;
  }
}

package org.barsheet.align.places;

/**
 * What the soft rules cost, in millionths: whole numbers add up exactly, so equal layouts are
 * equal. A cost of 1 is about what a shot half or nearly double as long as asked costs (its
 * logarithm, squared and weighted, is 4 × 0.5²).
 *
 * <p>None of these figures has a published source: they say which of two wishes gives way, and were
 * chosen so that only their order matters in ordinary plans.
 */
public final class Costs {

  /** The unit: one whole cost. */
  public static final long ONE = 1_000_000;

  /** An impossible step; small enough that two of them add up without overflow. */
  public static final long IMPOSSIBLE = Long.MAX_VALUE / 4;

  /**
   * Weight of x + 1/x − 2, where x is the length got over the length asked. Lengths count by
   * proportion: half as long is as bad as twice as long; and the cost never flattens out, so the
   * film's length is shared rather than given to one panel.
   */
  public static final double LENGTH_ASKED = 4;

  /**
   * The same where no length is asked, against the film's mean length. Small: it only keeps panels
   * nobody said anything about from being squeezed together.
   */
  public static final double LENGTH_UNASKED = 0.25;

  /** A panel without a place on a mark: a section starts there. */
  public static final long FREE_ON_MARK = 0;

  /** A panel without a place on a bar line. */
  public static final long FREE_ON_BAR = ONE / 10;

  /** A panel without a place on another beat: six times a bar line, so that bars win. */
  static final long FREE_ON_BEAT = 6 * ONE / 10;

  /** A panel without a place off the beat: only where nothing else is possible. */
  static final long FREE_OFF_BEAT = 4 * ONE;

  /**
   * A return that is only likely: a certain one is left unused for it. More than most lengths ever
   * cost.
   */
  static final long LIKELY_RETURN = 8 * ONE / 10;

  /**
   * A cut that comes later than {@code cut: auto} would have it: only where another panel stands in
   * the way. More than any length ever costs.
   */
  static final long LATE_CUT = 6 * ONE;

  /** A reveal that is not shown as asked, to begin with. */
  static final long SQUEEZED = ONE / 2;

  /** The same by the share of its frames it loses. */
  static final double SQUEEZED_BY_SHARE = 3;

  private Costs() {}

  /** A cost given as a decimal. */
  static long of(double cost) {
    return StrictMath.round(cost * ONE);
  }

  /** Cost of a shot's length, in millionths before rounding: convex in the frames it gets. */
  public static double length(double weight, double frames, double wanted) {
    double share = frames / wanted;
    return weight * (share + 1 / share - 2) * ONE;
  }

  /** Cost of showing a reveal in a way other than asked. */
  public static long squeeze(PhotographRun way, PhotographRun asked) {
    if (way.equals(asked)) {
      return 0;
    }
    double kept = (double) way.frames() / asked.frames();
    return SQUEEZED + of(SQUEEZED_BY_SHARE * (1 - kept));
  }
}

package org.barsheet.exposure;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.barsheet.artwork.Measure;
import org.barsheet.plan.Hand;

/**
 * The largest step of a movement against the most it may go.
 *
 * @param picture the picture it leads to
 * @param step how far it goes
 * @param limit the most it may go
 * @param unit of both: "mm" at the free edge where the plan gives a limit, else the movement's own
 * @param enough how many moved pictures keep every step within the limit, where some number does
 */
public record LargestStep(int picture, double step, double limit, String unit, OptionalInt enough) {

  /**
   * A movement of fewer than eight even steps is seen as jumps: the limit where the plan gives
   * none. Our own choice, no source.
   */
  private static final int LEAST_EVEN_STEPS = 8;

  private static final int MOST_PICTURES = 9999;

  /** Room for the last digits of doubles. */
  private static final double DUST = 1e-9;

  /** The largest step of a movement as worked out, before it is rounded to what a hand can set. */
  public static LargestStep of(Movement movement, Hand hand) {
    return new Search(movement, hand).find();
  }

  public boolean isWithin() {
    return step <= limit + DUST;
  }

  public String words() {
    return amount(step);
  }

  public String limitWords() {
    return amount(limit);
  }

  private String amount(double amount) {
    return String.format(Locale.ROOT, "%.1f %s", amount, unit);
  }

  /** Looks at one movement with different numbers of pictures. */
  private static final class Search {
    private final Movement movement;
    private final Measure measure;
    private final boolean byEdge;
    private final double limit;

    Search(Movement movement, Hand hand) {
      this.movement = movement;
      this.measure = movement.measure();
      this.byEdge = hand.largestStep().isPresent() && measure.edgeStep(0, 1).isPresent();
      this.limit = byEdge ? hand.largestStep().orElseThrow() : ownLimit();
    }

    /** Free values are as they are wanted. */
    private double ownLimit() {
      return measure instanceof Measure.Listed
          ? Double.POSITIVE_INFINITY
          : measure.whole() / LEAST_EVEN_STEPS;
    }

    LargestStep find() {
      int moved = movement.moved().size();
      int worst = worstOf(moved);
      double step = step(worst, moved);
      String unit = byEdge ? "mm" : measure.unit();
      OptionalInt enough = step <= limit + DUST ? OptionalInt.of(moved) : enough(moved);
      return new LargestStep(worst, step, limit, unit, enough);
    }

    private int worstOf(int moved) {
      int worst = 1;
      for (int picture = 2; picture <= moved; picture++) {
        if (step(picture, moved) > step(worst, moved) + DUST) {
          worst = picture;
        }
      }
      return worst;
    }

    private double step(int picture, int moved) {
      double from = amount(picture - 1, moved);
      double to = amount(picture, moved);
      OptionalDouble edge = byEdge ? measure.edgeStep(from, to) : OptionalDouble.empty();
      return edge.orElse(Math.abs(to - from));
    }

    private double amount(int picture, int moved) {
      double progress = movement.slow().progress((double) picture / moved);
      return measure.amount(picture, progress, movement.evenIn());
    }

    /** The least number of pictures that is enough, from those there are upwards. */
    private OptionalInt enough(int moved) {
      if (measure instanceof Measure.Listed) {
        return OptionalInt.empty();
      }
      int low = moved;
      int high = MOST_PICTURES;
      if (step(worstOf(high), high) > limit + DUST) {
        return OptionalInt.empty();
      }
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (step(worstOf(middle), middle) <= limit + DUST) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      return OptionalInt.of(high);
    }
  }
}

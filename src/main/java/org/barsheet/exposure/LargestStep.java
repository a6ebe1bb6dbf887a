package org.barsheet.exposure;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.barsheet.artwork.Measure;
import org.barsheet.plan.Hand;

/**
 * The largest step of a movement against the most it may go.
 *
 * @param photograph the photograph it leads to
 * @param step how far it goes
 * @param limit the most it may go
 * @param unit of both: "mm" at the free edge where the plan gives a limit, else the movement's own
 * @param enough how many moved photographs keep every step within the limit, where some number does
 */
public record LargestStep(
    int photograph, double step, double limit, String unit, OptionalInt enough) {

  /**
   * A movement of fewer than eight even steps is seen as jumps: the limit where the plan gives
   * none. Our own choice, no source.
   */
  private static final int LEAST_EVEN_STEPS = 8;

  private static final int MOST_PHOTOGRAPHS = 9999;

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

  /** Looks at one movement with different numbers of photographs. */
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
      for (int photograph = 2; photograph <= moved; photograph++) {
        if (step(photograph, moved) > step(worst, moved) + DUST) {
          worst = photograph;
        }
      }
      return worst;
    }

    private double step(int photograph, int moved) {
      double from = amount(photograph - 1, moved);
      double to = amount(photograph, moved);
      OptionalDouble edge = byEdge ? measure.edgeStep(from, to) : OptionalDouble.empty();
      return edge.orElse(Math.abs(to - from));
    }

    private double amount(int photograph, int moved) {
      double progress = movement.slow().progress((double) photograph / moved);
      return measure.amount(photograph, progress, movement.evenIn());
    }

    /** The least number of photographs that is enough, from those there are upwards. */
    private OptionalInt enough(int moved) {
      if (measure instanceof Measure.Listed) {
        return OptionalInt.empty();
      }
      int low = moved;
      int high = MOST_PHOTOGRAPHS;
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

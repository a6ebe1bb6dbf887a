package org.barsheet.exposure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Opening.Support;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Slow;

/**
 * Measures a movement photograph by photograph. Amounts are rounded to what a hand can set, each
 * from the movement's start, so that the steps add up to the whole movement and none goes
 * backwards.
 */
final class MovementMeasures {

  /** Amounts finer than this are no amounts of a plan; it takes off the dust of doubles. */
  private static final int WHOLE_DECIMALS = 4;

  /** Lengths that follow from what is set are told in tenths of a millimeter. */
  private static final int LENGTH_DECIMALS = 1;

  private final Measure measure;
  private final List<Support> supports;
  private final Optional<BigDecimal> unit;
  private final BigDecimal whole;
  private final OptionalDouble guide;
  private int support;

  MovementMeasures(Measure measure, List<Support> supports, Hand hand) {
    this.measure = measure;
    this.supports = supports;
    this.unit = unit(measure, hand);
    this.whole = whole(measure);
    this.guide =
        supports.stream()
            .flatMap(one -> one.guideMillimeters().stream())
            .mapToDouble(Double::doubleValue)
            .findFirst();
  }

  /** Where a way ends on no tenth of a millimeter, no hand can tell. */
  private BigDecimal whole(Measure measure) {
    BigDecimal exact = plain(measure.whole());
    int decimals = unit.map(BigDecimal::scale).orElse(WHOLE_DECIMALS);
    boolean isWay = measure.unit().equals("mm") && unit.isPresent();
    return isWay
        ? exact.setScale(Math.max(LENGTH_DECIMALS, decimals), RoundingMode.HALF_UP)
        : exact;
  }

  /** The smallest amount a hand sets; free values are set as they are given. */
  static Optional<BigDecimal> unit(Measure measure, Hand hand) {
    if (measure instanceof Measure.Listed) {
      return Optional.empty();
    }
    return Optional.of(
        switch (measure.unit()) {
          case "deg" -> plain(hand.degrees());
          case "mm" -> plain(hand.millimeters());
          default -> plain(hand.percent());
        });
  }

  private static BigDecimal plain(double amount) {
    BigDecimal decimal = BigDecimal.valueOf(amount).setScale(WHOLE_DECIMALS, RoundingMode.HALF_UP);
    return new BigDecimal(decimal.stripTrailingZeros().toPlainString());
  }

  /** Photograph 0 and the moved ones. */
  List<MovedPhotograph> photographs(String name, Slow slow, EvenIn evenIn, int moved) {
    List<MovedPhotograph> photographs = new ArrayList<>();
    BigDecimal before = BigDecimal.ZERO;
    support = 0;
    for (int number = 0; number <= moved; number++) {
      double progress = slow.progress((double) number / moved);
      double amount = measure.amount(number, progress, evenIn);
      BigDecimal set = number == moved ? whole : set(amount);
      photographs.add(
          new MovedPhotograph(
              new Photograph(name, number), progress, measures(number, amount, before, set)));
      before = set;
    }
    return photographs;
  }

  private BigDecimal set(double amount) {
    if (unit.isEmpty()) {
      return plain(amount);
    }
    BigDecimal units =
        BigDecimal.valueOf(amount).divide(unit.get(), 0, RoundingMode.HALF_UP).multiply(unit.get());
    return units.min(whole);
  }

  private PhotographMeasures measures(
      int number, double amount, BigDecimal before, BigDecimal set) {
    double at = set.doubleValue();
    return new PhotographMeasures(
        amount,
        set,
        set.subtract(before),
        length(measure.edgeStep(before.doubleValue(), at)),
        length(measure.height(at)),
        length(pull(at)),
        measure.uncovered(at),
        number == 0 ? Optional.empty() : heldBy(measure.height(at)));
  }

  private static Optional<BigDecimal> length(OptionalDouble millimeters) {
    return millimeters.isEmpty()
        ? Optional.empty()
        : Optional.of(
            BigDecimal.valueOf(millimeters.getAsDouble())
                .setScale(LENGTH_DECIMALS, RoundingMode.HALF_UP));
  }

  private OptionalDouble pull(double amount) {
    return guide.isPresent() && measure instanceof Measure.Turn turn
        ? OptionalDouble.of(turn.hinge().pull(amount, guide.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** The first support that still reaches; once it has changed, it does not change back. */
  private Optional<Support> heldBy(OptionalDouble height) {
    while (support < supports.size() && isPast(supports.get(support), height)) {
      support++;
    }
    return support < supports.size() ? Optional.of(supports.get(support)) : Optional.empty();
  }

  private static boolean isPast(Support support, OptionalDouble height) {
    return support.upToMillimeters().isPresent()
        && height.isPresent()
        && height.getAsDouble() > support.upToMillimeters().get();
  }
}

package org.barsheet.revision;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;

/**
 * How fast bars go by.
 *
 * @param beats felt beats, written
 * @param length how long they sound
 * @param steady whether every bar of them goes by equally fast
 */
public record Pace(BigFraction beats, Seconds length, boolean steady) {

  /** Of no bar at all. */
  public static final Pace NONE = new Pace(BigFraction.ZERO, Seconds.ZERO, true);

  /** Of one bar. */
  static Pace of(BigFraction beats, Seconds length) {
    return new Pace(beats, length, true);
  }

  /** Of these bars and those after them. */
  Pace plus(Pace next) {
    boolean even = beats.multiply(next.length.value()).equals(next.beats.multiply(length.value()));
    return new Pace(beats.add(next.beats), length.plus(next.length), steady && next.steady && even);
  }

  /** Felt bpm, to one decimal: "96", "92.5". */
  String words() {
    BigFraction rate = Seconds.of(60).value().multiply(beats).divide(length.value());
    BigDecimal rounded =
        new BigDecimal(rate.getNumerator())
            .divide(new BigDecimal(rate.getDenominator()), 1, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return rounded.setScale(Math.max(0, rounded.scale())).toPlainString();
  }
}

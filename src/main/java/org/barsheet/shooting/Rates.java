package org.barsheet.shooting;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.plan.Shoot;

/**
 * The director's own rates of work in hours, as exact fractions, so that work that fills a day to
 * the minute does not run into the next.
 *
 * @param photograph for a photograph
 * @param settingUp for a setup, before its first photograph
 * @param day of a working day, where given; more than 0
 * @param starts the first day, where given
 */
record Rates(
    BigFraction photograph,
    BigFraction settingUp,
    Optional<BigFraction> day,
    Optional<LocalDate> starts) {

  private static final BigFraction MINUTES_AN_HOUR = BigFraction.of(60);

  /** Where the plan gives none: only the order of the work means anything then. */
  static final Rates NONE =
      new Rates(BigFraction.ONE, BigFraction.ONE, Optional.empty(), Optional.empty());

  static Rates of(Shoot shoot) {
    return new Rates(
        exact(shoot.photographsPerHour()).reciprocal(),
        exact(shoot.minutesPerSetup()).divide(MINUTES_AN_HOUR),
        shoot.hoursPerDay().map(Rates::exact),
        shoot.starts());
  }

  BigFraction photographs(int count) {
    return photograph.multiply(count);
  }

  /** Working days a time fills, a begun one with them; at least one. */
  int days(BigFraction time) {
    BigFraction days = time.divide(day.orElseThrow());
    BigInteger[] parts = days.getNumerator().divideAndRemainder(days.getDenominator());
    return Math.max(1, parts[0].intValueExact() + (parts[1].signum() > 0 ? 1 : 0));
  }

  /** The working day on which something begins, from 1. */
  int dayOf(BigFraction begins) {
    return begins.divide(day.orElseThrow()).intValue() + 1;
  }

  /** Date of a working day from 1; days are counted one after another, without days of rest. */
  Optional<LocalDate> date(int number) {
    return starts.map(first -> first.plusDays(number - 1L));
  }

  /** The fraction that a plan's decimal says. */
  private static BigFraction exact(double number) {
    BigDecimal decimal = BigDecimal.valueOf(number).stripTrailingZeros();
    return decimal.scale() > 0
        ? BigFraction.of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
        : BigFraction.of(decimal.toBigIntegerExact());
  }
}

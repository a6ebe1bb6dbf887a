package org.barsheet.shooting;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.plan.Shoot;

/**
 * Adds up hours of work at the director's own rates, as exact fractions, so that work that fills a
 * day to the minute does not run into the next.
 */
final class WorkClock {

  private static final BigFraction MINUTES_AN_HOUR = BigFraction.of(60);

  private final Optional<Shoot> shoot;
  private BigFraction sum = BigFraction.ZERO;

  WorkClock(Optional<Shoot> shoot) {
    this.shoot = shoot;
  }

  /** The time for a setup with so many photographs, after what was taken before it. */
  Optional<WorkTime> take(int photographs) {
    if (shoot.isEmpty()) {
      return Optional.empty();
    }
    BigFraction start = sum;
    BigFraction settingUp = exact(shoot.get().minutesPerSetup()).divide(MINUTES_AN_HOUR);
    sum = sum.add(settingUp).add(taking(shoot.get(), photographs));
    return Optional.of(time(shoot.get(), start, sum));
  }

  /** How long so many photographs take, without setting up; empty without rates. */
  OptionalDouble hoursOf(int photographs) {
    return shoot.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(taking(shoot.get(), photographs).doubleValue());
  }

  private static BigFraction taking(Shoot rates, int photographs) {
    return BigFraction.of(photographs).divide(exact(rates.photographsPerHour()));
  }

  /** All that was taken; empty without rates, or without work. */
  Optional<WorkTime> total() {
    return shoot.filter(rates -> sum.signum() > 0).map(rates -> time(rates, BigFraction.ZERO, sum));
  }

  private static WorkTime time(Shoot rates, BigFraction start, BigFraction end) {
    double hours = end.subtract(start).doubleValue();
    if (rates.hoursPerDay().isEmpty()) {
      return new WorkTime(
          hours, OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
    }
    BigFraction day = exact(rates.hoursPerDay().get());
    int first = start.divide(day).intValue() + 1;
    int last = Math.max(first, ceiling(end.divide(day)));
    return new WorkTime(
        hours,
        OptionalInt.of(first),
        OptionalInt.of(last),
        rates.starts().map(date -> onDay(date, first)),
        rates.starts().map(date -> onDay(date, last)));
  }

  private static LocalDate onDay(LocalDate starts, int day) {
    return starts.plusDays(day - 1L);
  }

  private static int ceiling(BigFraction number) {
    BigInteger[] parts = number.getNumerator().divideAndRemainder(number.getDenominator());
    return parts[0].intValueExact() + (parts[1].signum() > 0 ? 1 : 0);
  }

  /** The fraction that a plan's decimal says. */
  private static BigFraction exact(double number) {
    BigDecimal decimal = BigDecimal.valueOf(number).stripTrailingZeros();
    return decimal.scale() > 0
        ? BigFraction.of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
        : BigFraction.of(decimal.toBigIntegerExact());
  }
}

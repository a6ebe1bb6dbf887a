package org.barsheet.clock;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A span or instant of time in seconds, as an exact rational number. Nothing is rounded until a
 * frame is asked for.
 *
 * @param value the number of seconds, in lowest terms, of any sign
 */
public record Seconds(BigFraction value) implements Comparable<Seconds> {

  public static final Seconds ZERO = new Seconds(BigFraction.ZERO);

  private static final Pattern FRACTION = Pattern.compile("(-?\\d{1,60})(?:/(\\d{1,60}))?");
  private static final Pattern DECIMAL =
      Pattern.compile("-?(?:\\d{1,30}(?:\\.\\d{0,30})?|\\.\\d{1,30})");

  /** A whole number of seconds. */
  public static Seconds of(long seconds) {
    return new Seconds(BigFraction.of(seconds));
  }

  /**
   * {@code numerator / denominator} seconds.
   *
   * @throws ArithmeticException if the denominator is 0
   */
  public static Seconds of(long numerator, long denominator) {
    return new Seconds(BigFraction.of(numerator, denominator));
  }

  /**
   * Reads what {@link #toString} prints ({@code 1001/24000}), or a decimal number ({@code 2.5}).
   *
   * @throws IllegalArgumentException if the text is neither, or a denominator is 0
   */
  public static Seconds parse(String text) {
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      BigInteger denominator =
          fraction.group(2) == null ? BigInteger.ONE : new BigInteger(fraction.group(2));
      if (denominator.signum() == 0) {
        throw new IllegalArgumentException("a denominator of 0: " + text);
      }
      return new Seconds(BigFraction.of(new BigInteger(fraction.group(1)), denominator));
    }
    if (!DECIMAL.matcher(text).matches()) {
      throw new IllegalArgumentException("not a number of seconds: " + text);
    }
    BigDecimal decimal = new BigDecimal(text);
    return new Seconds(
        BigFraction.of(decimal.unscaledValue()).divide(BigInteger.TEN.pow(decimal.scale())));
  }

  public Seconds plus(Seconds other) {
    return new Seconds(value.add(other.value));
  }

  public Seconds minus(Seconds other) {
    return new Seconds(value.subtract(other.value));
  }

  public Seconds times(BigFraction factor) {
    return new Seconds(value.multiply(factor));
  }

  public Seconds times(long factor) {
    return new Seconds(value.multiply(factor));
  }

  /**
   * {@code this / other}, a pure number.
   *
   * @throws ArithmeticException if the other is 0 s
   */
  public BigFraction dividedBy(Seconds other) {
    return value.divide(other.value);
  }

  /** -1, 0 or 1. */
  public int signum() {
    return value.signum();
  }

  /** Rounded to a number of decimal places (ties away from zero), for people to read. */
  public BigDecimal toDecimal(int places) {
    return new BigDecimal(value.getNumerator())
        .divide(new BigDecimal(value.getDenominator()), places, RoundingMode.HALF_UP);
  }

  /** The nearest {@code double}: for drawing and statistics, never on the way to a frame. */
  public double toDouble() {
    return value.doubleValue();
  }

  @Override
  public int compareTo(Seconds other) {
    // BigFraction 1.2 compares two negative numbers by their size alone
    return signum() < 0 && other.signum() < 0
        ? other.value.abs().compareTo(value.abs())
        : value.compareTo(other.value);
  }

  /** The exact value: {@code 2}, {@code 1001/24000}. */
  @Override
  public String toString() {
    BigInteger denominator = value.getDenominator();
    return denominator.equals(BigInteger.ONE)
        ? value.getNumerator().toString()
        : value.getNumerator() + "/" + denominator;
  }
}

package org.barsheet.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.SyntaxException;

/**
 * How long something is asked to be. {@code toString} prints what the grammar reads.
 *
 * @param unit what is counted
 * @param least the least amount, 0 or more
 * @param most the most, at least {@code least}; equal to it where one amount is asked, {@link
 *     #NO_MOST} where only a least is
 */
public record Length(Unit unit, BigFraction least, BigFraction most) {

  /** More of any unit than the grammar reads as a number. */
  public static final BigFraction NO_MOST = BigFraction.of(10_000_000);

  /** What a length counts. */
  public enum Unit {
    BARS("bar"),
    BEATS("beat"),
    SECONDS("s"),
    FRAMES("f");

    private final String word;

    Unit(String word) {
      this.word = word;
    }

    /** The word for one of them. */
    public String word() {
      return word;
    }
  }

  public Length {
    if (least.signum() < 0 || most.compareTo(least) < 0) {
      throw new IllegalArgumentException("a length runs from its least to its most");
    }
  }

  /**
   * Reads {@code 4 bars}, {@code 3 beats}, {@code 2.5 s}, {@code 60 f}, {@code 2..4 bars}, {@code
   * at least 8 bars} or {@code at most 3 s}.
   *
   * @throws SyntaxException at the first character that does not belong
   */
  public static Length parse(String text) {
    return LengthGrammar.parse(text);
  }

  /** One amount. */
  public static Length of(Unit unit, BigFraction amount) {
    return new Length(unit, amount, amount);
  }

  /** Whether it names a least and a most rather than one amount. */
  public boolean isRange() {
    return !least.equals(most);
  }

  @Override
  public String toString() {
    if (!isRange()) {
      return amount(most);
    }
    if (most.equals(NO_MOST)) {
      return "at least " + amount(least);
    }
    return least.signum() == 0 ? "at most " + amount(most) : decimal(least) + ".." + amount(most);
  }

  private String amount(BigFraction number) {
    boolean counted = unit == Unit.BARS || unit == Unit.BEATS;
    boolean many = counted && !number.equals(BigFraction.ONE);
    return decimal(number) + " " + unit.word() + (many ? "s" : "");
  }

  static String decimal(BigFraction number) {
    return new BigDecimal(number.getNumerator())
        .divide(new BigDecimal(number.getDenominator()), 6, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}

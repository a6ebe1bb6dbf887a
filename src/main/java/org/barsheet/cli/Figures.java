package org.barsheet.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;

/** Numbers as people read them. */
final class Figures {

  private Figures() {}

  /** {@code 3 min 31.2 s}, {@code 1 h 2 min 0.0 s}, to a tenth of a second. */
  static String duration(Seconds length) {
    BigDecimal tenths = length.toDecimal(1);
    long whole = tenths.longValue();
    BigDecimal seconds = tenths.subtract(BigDecimal.valueOf(whole / 60 * 60));
    String minutes = whole >= 60 ? whole / 60 % 60 + " min " : "";
    return (whole >= 3600 ? whole / 3600 + " h " : "") + minutes + seconds + " s";
  }

  /** {@code 1 bar}, {@code 2 bars}. */
  static String count(long number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }

  /** A number to at most so many decimals, without trailing zeros. */
  static String number(BigFraction value, int places) {
    return decimal(value, places).toPlainString();
  }

  /** The same as a number. */
  static BigDecimal decimal(BigFraction value, int places) {
    BigDecimal rounded =
        new BigDecimal(value.getNumerator())
            .divide(new BigDecimal(value.getDenominator()), places, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }

  /** A constant as a word: {@code not-shown}. */
  static String constant(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

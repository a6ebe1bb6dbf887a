package org.barsheet.handoff.card;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as cards spell them. */
final class Amounts {

  private Amounts() {}

  /** To a tenth, without needless decimals. */
  static String tenth(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
    return plain(rounded);
  }

  /** Without needless decimals. */
  static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}

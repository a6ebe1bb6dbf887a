package org.barsheet.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as sheets spell them: to a tenth of a millimeter. */
final class Millimeters {

  private Millimeters() {}

  static String of(double length) {
    BigDecimal rounded = BigDecimal.valueOf(length).setScale(1, RoundingMode.HALF_UP);
    return rounded.stripTrailingZeros().toPlainString();
  }

  /** {@code 114.3 × 167.6 mm}. */
  static String of(double width, double height) {
    return of(width) + " × " + of(height) + " mm";
  }
}

package org.barsheet.ticks;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.barsheet.input.Prose;

/** What is taken and what is left, in a sentence or two. */
public final class LeftWords {

  private LeftWords() {}

  /**
   * {@code 112 of 312 photographs taken, 3 to take again. Left: 200 photographs in 6 setups, 12.8
   * hours, 3 days, done on 2026-03-06.}
   */
  public static String of(Taken taken) {
    Left left = taken.left();
    if (left.photographs() == 0) {
      return taken.words() + ".";
    }
    StringBuilder words = new StringBuilder(taken.words()).append(". Left: ");
    words.append(Prose.count(left.photographs(), "photograph"));
    words.append(" in ").append(Prose.count(left.setups(), "setup"));
    left.hours().ifPresent(hours -> words.append(", ").append(count(hours, "hour")));
    left.days().ifPresent(days -> words.append(", ").append(Prose.count(days, "day")));
    left.ends().ifPresent(day -> words.append(", done on ").append(day));
    if (left.measured()) {
      words
          .append(" (pace measured: ")
          .append(count(left.perHour().orElseThrow(), "photograph"))
          .append(" an hour)");
    }
    return words.append(".").toString();
  }

  /** {@code 12.8 hours}, {@code 1 hour}. */
  private static String count(double number, String noun) {
    BigDecimal tenths = BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
    boolean one = tenths.compareTo(BigDecimal.ONE) == 0;
    return tenths.stripTrailingZeros().toPlainString() + " " + noun + (one ? "" : "s");
  }
}

package org.barsheet.pulse;

import org.barsheet.clock.Seconds;

/**
 * What became of bars in a row between two versions of a score.
 *
 * @param kind what happened to them
 * @param firstBefore printed number of the first of them before; 0 where they are new
 * @param lastBefore printed number of the last of them before; 0 where they are new
 * @param firstNow printed number of the first of them now; 0 where they are gone
 * @param lastNow printed number of the last of them now; 0 where they are gone
 * @param longer how much longer they sound, negative if shorter; 0 where they are new or gone
 * @param detail who plays otherwise, in words, or ""
 */
public record MusicChange(
    Kind kind,
    int firstBefore,
    int lastBefore,
    int firstNow,
    int lastNow,
    Seconds longer,
    String detail) {

  /** What happened to bars. */
  public enum Kind {
    /** The same notes at the same written place; their tempo may differ. */
    SAME,
    /** Other notes. */
    CHANGED,
    NEW,
    GONE
  }

  /** Whether a person has to know of it. */
  public boolean isChange() {
    return kind != Kind.SAME || firstBefore != firstNow || !longer.equals(Seconds.ZERO);
  }

  /** In a sentence without closing full stop. */
  public String sentence() {
    return switch (kind) {
      case NEW -> bars(firstNow, lastNow) + (firstNow == lastNow ? " is new" : " are new");
      case GONE ->
          bars(firstBefore, lastBefore) + (firstBefore == lastBefore ? " is gone" : " are gone");
      case CHANGED -> bars(firstNow, lastNow) + was() + ": other notes" + detail + time();
      case SAME -> bars(firstNow, lastNow) + was() + ": the same notes" + time();
    };
  }

  private String was() {
    return firstBefore == firstNow ? "" : " (was " + bars(firstBefore, lastBefore) + ")";
  }

  private String time() {
    if (longer.equals(Seconds.ZERO)) {
      return "";
    }
    boolean shorter = longer.compareTo(Seconds.ZERO) < 0;
    Seconds by = shorter ? Seconds.ZERO.minus(longer) : longer;
    return ", " + by.toDecimal(3).toPlainString() + " s " + (shorter ? "shorter" : "longer");
  }

  private static String bars(int first, int last) {
    return first == last ? "bar " + first : "bars " + first + " to " + last;
  }
}

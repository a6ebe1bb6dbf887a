package org.barsheet.revision;

import java.math.BigDecimal;
import org.barsheet.clock.Seconds;

/**
 * What became of bars in a row between two versions of a score.
 *
 * @param kind what happened to them
 * @param firstBefore printed number of the first of them before; 0 where they are new
 * @param lastBefore printed number of the last of them before; 0 where they are new
 * @param firstNow printed number of the first of them now; 0 where they are gone
 * @param lastNow printed number of the last of them now; 0 where they are gone
 * @param paceBefore how fast they went by; {@link Pace#NONE} where they are new or gone
 * @param paceNow how fast they go by; {@link Pace#NONE} where they are new or gone
 * @param detail what is played otherwise, in words, or ""
 */
public record MusicChange(
    Kind kind,
    int firstBefore,
    int lastBefore,
    int firstNow,
    int lastNow,
    Pace paceBefore,
    Pace paceNow,
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

  /** How much longer they sound, negative if shorter; 0 where they are new or gone. */
  public Seconds longer() {
    return paceNow.length().minus(paceBefore.length());
  }

  /** Whether a person has to know of it. */
  public boolean isChange() {
    return kind != Kind.SAME || firstBefore != firstNow || !longer().equals(Seconds.ZERO);
  }

  /** In a sentence without closing full stop. */
  public String sentence() {
    return switch (kind) {
      case NEW -> bars(firstNow, lastNow) + (firstNow == lastNow ? " is new" : " are new");
      case GONE ->
          bars(firstBefore, lastBefore) + (firstBefore == lastBefore ? " is gone" : " are gone");
      case CHANGED -> bars(firstNow, lastNow) + was() + ": " + detail + time();
      case SAME -> bars(firstNow, lastNow) + was() + ": the same notes" + tempo() + time();
    };
  }

  private String was() {
    return firstBefore == firstNow ? "" : " (was " + bars(firstBefore, lastBefore) + ")";
  }

  /** ", faster (100 bpm, was 96)" where the tempo is another. */
  private String tempo() {
    int slower = longer().signum();
    if (slower == 0 || paceNow.words().equals(paceBefore.words())) {
      return "";
    }
    String average = paceBefore.steady() && paceNow.steady() ? "" : " on average";
    return (slower > 0 ? ", slower (" : ", faster (")
        + paceNow.words()
        + " bpm"
        + average
        + ", was "
        + paceBefore.words()
        + ")";
  }

  private String time() {
    Seconds longer = longer();
    if (longer.signum() == 0) {
      return "";
    }
    boolean shorter = longer.signum() < 0;
    BigDecimal by = longer.toDecimal(3).abs();
    String amount = by.signum() == 0 ? "less than 0.001" : by.toPlainString();
    return ", " + amount + " s " + (shorter ? "shorter" : "longer");
  }

  private static String bars(int first, int last) {
    return first == last ? "bar " + first : "bars " + first + " to " + last;
  }
}

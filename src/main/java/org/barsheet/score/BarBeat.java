package org.barsheet.score;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A place in the music as musicians say it.
 *
 * @param bar printed bar number
 * @param time which time round, 1 or more
 * @param beat felt beat, the first is 1; 2½ lies half-way between the second and the third
 */
public record BarBeat(int bar, int time, BigFraction beat) {

  public BarBeat {
    if (time < 1 || beat.compareTo(BigFraction.ONE) < 0) {
      throw new IllegalArgumentException("beats and times round count from 1");
    }
  }

  /** The first beat of a bar. */
  public static BarBeat ofBar(int bar) {
    return new BarBeat(bar, 1, BigFraction.ONE);
  }

  /** The beat as people write it: {@code 3}, {@code 2.5}, to three decimals. */
  public String beatText() {
    return new BigDecimal(beat.getNumerator())
        .divide(new BigDecimal(beat.getDenominator()), 3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  public boolean isDownbeat() {
    return beat.equals(BigFraction.ONE);
  }

  /** {@code bar 12}, {@code bar 12 beat 2.5}, {@code bar 12 time 2 beat 3}: what a plan reads. */
  @Override
  public String toString() {
    return "bar "
        + bar
        + (time > 1 ? " time " + time : "")
        + (isDownbeat() ? "" : " beat " + beatText());
  }
}

package org.barsheet.pulse;

import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;

/**
 * One felt beat of the music.
 *
 * @param bar the bar it belongs to
 * @param number place in the bar, from 1
 * @param tick where it begins
 * @param quarter the same in quarter notes from tick 0
 * @param seconds its exact time, {@link Music#tempo}
 */
public record Beat(Bar bar, int number, long tick, BigFraction quarter, Seconds seconds) {

  public boolean isDownbeat() {
    return number == 1;
  }
}

package org.barsheet.calls;

import java.math.BigInteger;
import org.barsheet.clock.Seconds;

/** Times of a sound file, as a player shows them. */
final class FileTime {

  private FileTime() {}

  /** {@code 1:02.4}, to the nearest tenth. */
  static String minutes(Seconds time) {
    BigInteger tenths = time.toDecimal(1).movePointRight(1).toBigInteger().max(BigInteger.ZERO);
    long all = tenths.longValueExact();
    long seconds = all / 10 % 60;
    return all / 600 + ":" + (seconds < 10 ? "0" : "") + seconds + "." + all % 10;
  }
}

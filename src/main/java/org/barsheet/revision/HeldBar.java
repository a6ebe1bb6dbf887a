package org.barsheet.revision;

import java.util.List;

/**
 * A bar as played.
 *
 * @param number printed bar number
 * @param time 1 where it is played the first time, 2 the second time round
 * @param beats where each felt beat begins, in {@linkplain ScoreNotes#UNITS units} from tick 0
 * @param end where the next bar begins
 */
public record HeldBar(int number, int time, List<Long> beats, long end) {

  public HeldBar {
    beats = List.copyOf(beats);
    if (beats.isEmpty() || beats.get(0) > end) {
      throw new IllegalArgumentException("bar " + number + " ends before it begins");
    }
  }

  /** Where it begins. */
  public long start() {
    return beats.get(0);
  }

  /** How long it is. */
  public long length() {
    return end - start();
  }
}

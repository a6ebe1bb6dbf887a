package org.barsheet.score;

import java.util.ArrayList;
import java.util.List;

/**
 * One bar as played.
 *
 * @param index place in {@link BarGrid#bars}, from 0
 * @param number the printed bar number; a pickup is 0
 * @param time 1 where the bar is played the first time, 2 the second time round
 * @param meter the meter in force
 * @param startTick where it begins
 * @param endTick where the next one begins, more than {@code startTick}
 * @param beatTicks where each felt beat begins, the first at {@code startTick}
 * @param fullBeats felt beats of a full bar
 */
public record Bar(
    int index,
    int number,
    int time,
    Meter meter,
    long startTick,
    long endTick,
    List<Long> beatTicks,
    int fullBeats) {

  public Bar {
    beatTicks = List.copyOf(beatTicks);
    if (endTick <= startTick) {
      throw new IllegalArgumentException("bar " + number + " has no length");
    }
    if (beatTicks.isEmpty() || beatTicks.get(0) != startTick) {
      throw new IllegalArgumentException("bar " + number + " does not begin on its first beat");
    }
  }

  /** A bar that counts the felt beats of its meter. */
  public Bar(
      int index,
      int number,
      int time,
      Meter meter,
      long startTick,
      long endTick,
      List<Long> beatTicks) {
    this(index, number, time, meter, startTick, endTick, beatTicks, meter.feltBeats());
  }

  /**
   * A bar whose beats are all equally long but perhaps the last, numbered by its place from 1.
   *
   * @param beatTicks length of a felt beat
   */
  public static Bar counted(int index, Meter meter, long startTick, long endTick, long beatTicks) {
    List<Long> beats = new ArrayList<>();
    for (long tick = startTick; tick < endTick; tick += beatTicks) {
      beats.add(tick);
    }
    return new Bar(index, index + 1, 1, meter, startTick, endTick, beats);
  }

  /** The same bar under another printed number. */
  public Bar numbered(int newNumber, int newTime) {
    return new Bar(index, newNumber, newTime, meter, startTick, endTick, beatTicks, fullBeats);
  }

  /** The same bar in another place of a grid. */
  public Bar at(int newIndex) {
    return new Bar(newIndex, number, time, meter, startTick, endTick, beatTicks, fullBeats);
  }

  /** Whether it holds fewer felt beats than a full bar. */
  public boolean isShort() {
    return beatTicks.size() < fullBeats;
  }

  public boolean contains(long tick) {
    return tick >= startTick && tick < endTick;
  }

  public long lengthTicks() {
    return endTick - startTick;
  }
}

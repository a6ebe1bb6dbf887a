package org.barsheet.pulse.evidence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barsheet.score.Meter;

/**
 * A meter as a pattern of slots, the divisions of its beats.
 *
 * @param meter what is written down
 * @param beats slots of each beat: two, or three where it is dotted
 */
public record MeterPattern(Meter meter, List<Integer> beats) {

  /** Places in a bar: its beginning, its middle, another beat, a division of a beat. */
  public static final int BAR = 0;

  static final int MIDDLE = 1;
  public static final int BEAT = 2;
  public static final int DIVISION = 3;

  /** None of them. */
  public static final int OTHER = 4;

  /** How many places there are, {@link #OTHER} counted. */
  static final int PLACES = 5;

  private static final int MIDDLE_BEAT = 2;
  private static final int BEATS_WITH_MIDDLE = 4;

  /** The meters that are looked for; uneven ones with their usual groups. */
  public static final List<MeterPattern> ALL =
      List.of(
          even(2, 4, 2),
          even(3, 4, 2),
          even(4, 4, 2),
          even(6, 8, 3),
          even(9, 8, 3),
          even(12, 8, 3),
          even(5, 4, 2),
          new MeterPattern(new Meter(7, 8), List.of(2, 2, 3)),
          new MeterPattern(new Meter(7, 8), List.of(3, 2, 2)),
          new MeterPattern(new Meter(5, 8), List.of(3, 2)),
          new MeterPattern(new Meter(5, 8), List.of(2, 3)));

  public MeterPattern {
    beats = List.copyOf(beats);
  }

  private static MeterPattern even(int numerator, int denominator, int slots) {
    Meter meter = new Meter(numerator, denominator);
    List<Integer> beats = new ArrayList<>();
    for (int beat = 0; beat < meter.feltBeats(); beat++) {
      beats.add(slots);
    }
    return new MeterPattern(meter, beats);
  }

  /** Whether it has the beats of a meter; 3/8 is like 3/4. */
  public boolean isLike(Meter asked) {
    return meter.feltBeats() == asked.feltBeats() && meter.isCompound() == asked.isCompound();
  }

  /** Whether its bars have half or twice as many of the same beats as another's. */
  public boolean isHalfOrTwice(MeterPattern other) {
    int size = beats.size();
    int otherSize = other.beats.size();
    return isCompound() == other.isCompound() && (size == 2 * otherSize || otherSize == 2 * size);
  }

  /** Whether notes alone seldom tell it from another: dotted beats or not, 5/8 or 5/4. */
  public boolean isTwin(MeterPattern other) {
    return isUneven()
        ? other.meter.numerator() == meter.numerator() && !other.meter.equals(meter)
        : !other.isUneven() && isCompound() != other.isCompound();
  }

  /** The pattern of a meter, with the meter's own name. */
  public static MeterPattern like(Meter asked) {
    for (MeterPattern known : ALL) {
      if (known.meter.equals(asked)) {
        return known;
      }
    }
    int slots = asked.isCompound() ? 3 : 2;
    return new MeterPattern(asked, Collections.nCopies(asked.feltBeats(), slots));
  }

  /**
   * The slots on which the meter counts its beats: every division where its beats differ, as a
   * written 7/8 is counted in seven.
   */
  public List<Integer> countedBeats() {
    boolean all = meter.feltBeats() == length();
    List<Integer> counted = new ArrayList<>();
    int slot = 0;
    for (int beat : beats) {
      int last = all ? slot + beat - 1 : slot;
      for (int one = slot; one <= last; one++) {
        counted.add(one);
      }
      slot += beat;
    }
    return counted;
  }

  /** Slots of a bar. */
  public int length() {
    return beats.stream().mapToInt(Integer::intValue).sum();
  }

  /** Whether its bars have five or seven divisions or beats. */
  public boolean isUneven() {
    return meter.numerator() == 5 || meter.numerator() == 7;
  }

  /** Whether every beat is dotted. */
  public boolean isCompound() {
    return meter.isCompound();
  }

  /** The place of each slot. */
  public int[] places() {
    int[] places = new int[length()];
    int slot = 0;
    for (int beat = 0; beat < beats.size(); beat++) {
      places[slot] = beat == 0 ? BAR : isMiddle(beat) ? MIDDLE : BEAT;
      for (int division = 1; division < beats.get(beat); division++) {
        places[slot + division] = DIVISION;
      }
      slot += beats.get(beat);
    }
    return places;
  }

  private boolean isMiddle(int beat) {
    return beat == MIDDLE_BEAT && beats.size() == BEATS_WITH_MIDDLE;
  }
}

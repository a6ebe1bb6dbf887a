package org.barsheet.motif.match;

import org.barsheet.motif.Match;

/**
 * What a change of a motif costs, in thousandths of a lost inner note.
 *
 * <p>Intervals are compared by scale steps without spelling: a number of semitones stands for every
 * generic interval (second, third …) it may be, so that tonal answers and returns in the minor cost
 * little whatever the key.
 */
public final class MatchRules {

  /** More than any pattern can pay. */
  static final int NEVER = 1_000_000_000;

  private static final int OTHER_PART = 250;
  private static final int TAKEN_OVER = 30;
  public static final int LENGTH_CHANGED = 100;
  public static final int LENGTH_FAR_OFF = 250;

  private static final int WIDEST = 127;
  private static final int FEW_SHIFTED = 3;

  /** Same steps but another quality; one step off; two steps off. Further off is another note. */
  private static final int[] CHROMATIC_COSTS = {NEVER, NEVER, NEVER};

  private static final int[] TONAL_COSTS = {120, 450, 1300};
  private static final int[] FREE_COSTS = {80, 300, 700};

  /**
   * From a seventh on a leap may be another such leap the same way at this percentage of the cost,
   * as in tonal answers. From a fourth on, at 65, was tried: it added false finds in real fugues.
   */
  private static final int LEAP = 10;

  private static final int LEAP_SHARE = 40;

  private static final MatchRules CHROMATIC = new MatchRules(CHROMATIC_COSTS, 0, false, false);
  private static final MatchRules TONAL = new MatchRules(TONAL_COSTS, 450, true, false);

  /** As tonal, but with every note on time. */
  public static final MatchRules TONAL_ON_TIME = new MatchRules(TONAL_COSTS, 0, true, false);

  private static final MatchRules FREE = new MatchRules(FREE_COSTS, 300, true, false);

  /** For ornamented returns, any of whose notes an ornament may push about. */
  public static final MatchRules ORNAMENTED = new MatchRules(TONAL_COSTS, 150, true, true);

  private final int[][] intervals = new int[2 * WIDEST + 1][2 * WIDEST + 1];
  private final int[] lowest = new int[2 * WIDEST + 1];
  private final int[] highest = new int[2 * WIDEST + 1];
  private final int shiftCost;
  private final boolean notesMayBeMissing;
  private final boolean anyNoteMayShift;

  private MatchRules(
      int[] costs, int shiftCost, boolean notesMayBeMissing, boolean anyNoteMayShift) {
    this.shiftCost = shiftCost;
    this.notesMayBeMissing = notesMayBeMissing;
    this.anyNoteMayShift = anyNoteMayShift;
    for (int asked = -WIDEST; asked <= WIDEST; asked++) {
      for (int heard = -WIDEST; heard <= WIDEST; heard++) {
        intervals[asked + WIDEST][heard + WIDEST] = asked == heard ? 0 : cost(asked, heard, costs);
      }
      limit(asked + WIDEST);
    }
  }

  private void limit(int row) {
    int least = 0;
    int most = 2 * WIDEST;
    while (intervals[row][least] == NEVER) {
      least++;
    }
    while (intervals[row][most] == NEVER) {
      most--;
    }
    lowest[row] = least - WIDEST;
    highest[row] = most - WIDEST;
  }

  private static int cost(int asked, int heard, int[] costs) {
    int steps = Intervals.stepsApart(asked, heard);
    boolean leaps = asked * heard > 0 && Math.min(Math.abs(asked), Math.abs(heard)) >= LEAP;
    int cost = steps < costs.length ? costs[steps] : NEVER;
    return steps > 0 && leaps && cost < NEVER ? cost * LEAP_SHARE / 100 : cost;
  }

  public static MatchRules of(Match match) {
    return switch (match) {
      case EXACT, TRANSPOSED -> CHROMATIC;
      case TONAL -> TONAL;
      case FREE -> FREE;
    };
  }

  /** Costs of hearing each interval, by {@link #column}, where this one is asked. */
  public int[] row(int asked) {
    return intervals[asked + WIDEST];
  }

  /** The lowest interval that may stand for one; lower ones are too far off. */
  int lowest(int asked) {
    return lowest[asked + WIDEST];
  }

  /** The highest interval that may stand for one. */
  int highest(int asked) {
    return highest[asked + WIDEST];
  }

  public static int column(int heard) {
    return heard + WIDEST;
  }

  /** Cost of a note that is held longer or shorter than asked. */
  static int length(long asked, long heard) {
    if (heard > 2 * asked || 4 * heard < asked) {
      return LENGTH_FAR_OFF;
    }
    return heard > longest(asked) || heard < shortest(asked) ? LENGTH_CHANGED : 0;
  }

  /** The longest that a note may be held without being longer than asked. */
  static long longest(long asked) {
    return 103 * asked / 100;
  }

  /** The shortest that a note may be held without being shorter than asked. */
  static long shortest(long asked) {
    return (3 * asked + 3) / 4;
  }

  /** Cost of the step to a note of another part. */
  public static int part(NoteField field, int before, int note) {
    return field.sharePart(before, note)
        ? 0
        : field.takesOver(before, note) ? TAKEN_OVER : OTHER_PART;
  }

  public boolean notesMayBeMissing() {
    return notesMayBeMissing;
  }

  /** Whether a note may come early or late. */
  boolean mayShift() {
    return shiftCost > 0;
  }

  /** How many notes of a pattern may come early or late before it is looked at no more. */
  int mostShifted(int patternSize) {
    return !mayShift() ? 0 : anyNoteMayShift ? patternSize : FEW_SHIFTED;
  }

  /** Whether the first and the last note may come late too. */
  boolean endsMayBeLate() {
    return anyNoteMayShift;
  }

  /** Cost of a note that comes early or late. */
  int shiftCost() {
    return shiftCost;
  }
}

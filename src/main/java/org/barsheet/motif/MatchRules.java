package org.barsheet.motif;

/**
 * What a change of a motif costs, in thousandths of a lost inner note.
 *
 * <p>Intervals are compared by scale steps without spelling: a number of semitones stands for every
 * generic interval (second, third …) it may be, so that tonal answers and returns in the minor cost
 * little whatever the key.
 */
final class MatchRules {

  /** More than any pattern can pay. */
  static final int NEVER = 1_000_000_000;

  static final int OTHER_PART = 250;
  private static final int OTHER_QUALITY = 120;
  private static final int STEP_OFF = 450;
  private static final int TWO_STEPS_OFF = 1300;
  static final int LENGTH_CHANGED = 100;
  static final int LENGTH_FAR_OFF = 250;

  private static final int WIDEST = 127;

  private final int[][] intervals;
  private final boolean notesMayBeMissing;

  private MatchRules(int[][] intervals, boolean notesMayBeMissing) {
    this.intervals = intervals;
    this.notesMayBeMissing = notesMayBeMissing;
  }

  private static final MatchRules CHROMATIC = new MatchRules(table(true), false);
  private static final MatchRules DIATONIC = new MatchRules(table(false), true);

  static MatchRules of(Match match) {
    return switch (match) {
      case EXACT, TRANSPOSED -> CHROMATIC;
      case TONAL, FREE -> DIATONIC;
    };
  }

  private static int[][] table(boolean exact) {
    int[][] table = new int[2 * WIDEST + 1][2 * WIDEST + 1];
    for (int asked = -WIDEST; asked <= WIDEST; asked++) {
      for (int heard = -WIDEST; heard <= WIDEST; heard++) {
        table[asked + WIDEST][heard + WIDEST] =
            exact && asked != heard ? NEVER : cost(asked, heard);
      }
    }
    return table;
  }

  private static int cost(int asked, int heard) {
    if (asked == heard) {
      return 0;
    }
    return switch (Intervals.stepsApart(asked, heard)) {
      case 0 -> OTHER_QUALITY;
      case 1 -> STEP_OFF;
      case 2 -> TWO_STEPS_OFF;
      default -> NEVER;
    };
  }

  /** Costs of hearing each interval, by {@link #column}, where this one is asked. */
  int[] row(int asked) {
    return intervals[asked + WIDEST];
  }

  static int column(int heard) {
    return heard + WIDEST;
  }

  /** Cost of a note that is held longer or shorter than asked. */
  static int length(long asked, long heard) {
    if (heard > 2 * asked || 4 * heard < asked) {
      return LENGTH_FAR_OFF;
    }
    return 100 * heard > 103 * asked || 4 * heard < 3 * asked ? LENGTH_CHANGED : 0;
  }

  boolean notesMayBeMissing() {
    return notesMayBeMissing;
  }
}

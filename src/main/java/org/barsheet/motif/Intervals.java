package org.barsheet.motif;

/** Intervals between pitches, in semitones and in scale steps. */
final class Intervals {

  /** The scale steps that 0 to 11 semitones may be: as a rule one, for 6 and 8 either of two. */
  private static final int[][] STEPS = {
    {0}, {1}, {1}, {2}, {2}, {3}, {3, 4}, {4}, {5, 4}, {5}, {6}, {6}
  };

  private static final String[] NAMES = {
    "unison",
    "semitone",
    "tone",
    "minor third",
    "major third",
    "fourth",
    "tritone",
    "fifth",
    "minor sixth",
    "sixth",
    "minor seventh",
    "major seventh"
  };

  private Intervals() {}

  /** Least number of scale steps by which two intervals, each in semitones, differ. */
  static int stepsApart(int interval, int other) {
    int least = Integer.MAX_VALUE;
    for (int step : STEPS[Math.abs(interval) % 12]) {
      for (int otherStep : STEPS[Math.abs(other) % 12]) {
        int apart = signed(interval, step) - signed(other, otherStep);
        least = Math.min(least, Math.abs(apart));
      }
    }
    return least;
  }

  private static int signed(int interval, int step) {
    return Integer.signum(interval) * (step + 7 * (Math.abs(interval) / 12));
  }

  /** "up a fifth", "down an octave and a third"; "at the same pitch" for 0. */
  static String words(int semitones) {
    if (semitones == 0) {
      return "at the same pitch";
    }
    return (semitones > 0 ? "up " : "down ") + size(Math.abs(semitones));
  }

  /** "an octave higher", "a third lower". */
  static String apart(int semitones) {
    return size(Math.abs(semitones)) + (semitones > 0 ? " higher" : " lower");
  }

  private static String size(int semitones) {
    int octaves = semitones / 12;
    String rest = semitones % 12 == 0 ? "" : "a " + NAMES[semitones % 12];
    String whole = octaves == 0 ? "" : octaves == 1 ? "an octave" : octaves + " octaves";
    String join = whole.isEmpty() || rest.isEmpty() ? "" : " and ";
    return whole + join + rest;
  }
}

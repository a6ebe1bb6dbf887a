package org.barsheet.score;

/** Intervals in the words of musicians. */
public final class IntervalWords {

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

  private IntervalWords() {}

  /**
   * "up a fifth", "down an octave and a minor third"; "at the same pitch" for 0.
   *
   * @param semitones upwards; less than 0 downwards
   */
  public static String move(int semitones) {
    if (semitones == 0) {
      return "at the same pitch";
    }
    return (semitones > 0 ? "up " : "down ") + size(Math.abs(semitones));
  }

  /**
   * "an octave higher", "a minor third lower".
   *
   * @param semitones upwards; less than 0 downwards; not 0
   */
  public static String apart(int semitones) {
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

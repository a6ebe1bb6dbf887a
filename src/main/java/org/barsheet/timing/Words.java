package org.barsheet.timing;

/** Numbers with their nouns. */
public final class Words {

  private Words() {}

  /** {@code 1 frame}, {@code 12 frames}. */
  public static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}

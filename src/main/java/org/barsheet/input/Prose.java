package org.barsheet.input;

import java.util.List;
import java.util.stream.Collectors;

/** Numbers with their nouns, and names in a list. */
public final class Prose {

  /** So many names are told one by one. */
  static final int MOST_NAMES = 8;

  private static final List<String> WORDS =
      List.of(
          "", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten",
          "Eleven", "Twelve");

  private Prose() {}

  /** Names with commas between them: the first eight, and how many there are more. */
  public static String listed(List<String> names) {
    int more = names.size() - MOST_NAMES;
    return names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  /** A number that begins a sentence: {@code Five}, {@code 13}. */
  public static String inWords(int number) {
    return number > 0 && number < WORDS.size() ? WORDS.get(number) : String.valueOf(number);
  }

  /** {@code 1 frame}, {@code 12 frames}. */
  public static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}

package org.barsheet.input;

import java.util.List;
import java.util.stream.Collectors;

/** Numbers with their nouns, and names in a list. */
public final class Prose {

  /** So many names are told one by one. */
  static final int MOST_NAMES = 8;

  private Prose() {}

  /** Names with commas between them: the first eight, and how many there are more. */
  public static String listed(List<String> names) {
    int more = names.size() - MOST_NAMES;
    return names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  /** {@code 1 frame}, {@code 12 frames}. */
  public static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}

package org.barsheet.input;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The known word that was probably meant. */
public final class Nearest {

  /** Longer words are not mistyped names. */
  private static final int LONGEST = 60;

  /** What people also call a thing, and the names it may have here; the first that is known. */
  private static final Map<String, List<String>> ALSO_CALLED =
      Map.ofEntries(
          Map.entry("picture", List.of("drawing", "pixels", "photographs")),
          Map.entry("pictures", List.of("photographs", "shown")),
          Map.entry("picture-lead", List.of("lead")),
          Map.entry("pictures-an-hour", List.of("photographs-per-hour")),
          Map.entry("minutes-a-set-up", List.of("minutes-per-setup")),
          Map.entry("hours-a-day", List.of("hours-per-day")),
          Map.entry("image", List.of("drawing")),
          Map.entry("size", List.of("frame-size", "pixels")),
          Map.entry("wide", List.of("width")),
          Map.entry("high", List.of("height")),
          Map.entry("way", List.of("step")),
          Map.entry("aperture", List.of("opening")),
          Map.entry("scene", List.of("panel")),
          Map.entry("scenes", List.of("panels")),
          Map.entry("shot", List.of("panel")),
          Map.entry("shots", List.of("panels")),
          Map.entry("door", List.of("opening")),
          Map.entry("doors", List.of("openings")),
          Map.entry("players", List.of("performers")),
          Map.entry("player", List.of("performer")),
          Map.entry("fps", List.of("frame-rate")),
          Map.entry("tick-0", List.of("start of file")));

  private Nearest() {}

  /**
   * The known word for what was typed: another name of the thing, or else the one spelled nearest,
   * the first of equals, if one is near enough.
   */
  public static Optional<String> to(String typed, Collection<String> known) {
    if (typed.length() > LONGEST) {
      return Optional.empty();
    }
    String wanted = plain(typed);
    Optional<String> other =
        ALSO_CALLED.getOrDefault(wanted, List.of()).stream().filter(known::contains).findFirst();
    if (other.isPresent()) {
      return other;
    }
    String best = "";
    int least = Math.max(1, (wanted.length() + 1) / 3) + 1;
    for (String word : known) {
      int distance = distance(wanted, plain(word));
      if (distance < least && distance < word.length()) {
        least = distance;
        best = word;
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  /**
   * Up to so many of the names, most alike first: those that hold the word, or that it holds, lead.
   */
  public static List<String> ranked(String wanted, Collection<String> names, int most) {
    return names.stream()
        .distinct()
        .sorted(
            Comparator.comparing((String name) -> !hold(plain(name), plain(wanted)))
                .thenComparingInt(name -> distance(plain(wanted), plain(name))))
        .limit(most)
        .toList();
  }

  /** Whether one of two names is a part of the other. */
  private static boolean hold(String one, String other) {
    return one.length() > 1 && other.length() > 1 && (one.contains(other) || other.contains(one));
  }

  private static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
  }

  /**
   * Insertions, deletions, replacements and swaps of neighbors from one word to the other (the
   * optimal string alignment form of Damerau's distance, Communications of the ACM 7, 1964).
   */
  private static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : step(a, b, i, j, cost);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int step(String a, String b, int i, int j, int[][] cost) {
    int replace = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replace, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
  }

  /**
   * What to do about a word nobody knows: "did you mean x?" where something is near, else what is
   * known, and {@code ifNoneKnown} where nothing is.
   */
  public static String remedy(String typed, Collection<String> known, String ifNoneKnown) {
    if (known.isEmpty()) {
      return ifNoneKnown;
    }
    return to(typed, known)
        .map(near -> "did you mean " + near + "?")
        .orElseGet(() -> "known here: " + String.join(", ", known.stream().limit(30).toList()));
  }
}

package org.barsheet.timing;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Names that look like one that is not there. */
final class Nearest {

  private static final int MOST = 3;

  private Nearest() {}

  /** Up to three of the names, most alike first. */
  static List<String> to(String wanted, List<String> names) {
    return names.stream()
        .distinct()
        .sorted(
            Comparator.comparing((String name) -> !hold(name, wanted))
                .thenComparingInt(name -> distance(wanted, name)))
        .limit(MOST)
        .toList();
  }

  /** Whether one of two names is a part of the other. */
  private static boolean hold(String one, String other) {
    String a = one.toLowerCase(Locale.ROOT);
    String b = other.strip().toLowerCase(Locale.ROOT);
    return a.length() > 1 && b.length() > 1 && (a.contains(b) || b.contains(a));
  }

  /** Letters to change, add or take away to turn one name into the other (edit distance). */
  private static int distance(String one, String other) {
    String a = one.toLowerCase(Locale.ROOT);
    String b = other.toLowerCase(Locale.ROOT);
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}

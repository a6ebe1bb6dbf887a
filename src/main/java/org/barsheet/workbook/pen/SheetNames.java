package org.barsheet.workbook.pen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Names of the sheets that are called after what people typed. A name has 31 characters at most,
 * none of {@code \ / ? * [ ] :}, no apostrophe at an end, and differs from all others in more than
 * capitals (support.microsoft.com, "Rename a worksheet"; ECMA-376 part 1, 18.2.19). The name starts
 * with a word of ours, so it is neither empty, nor reserved ("History"), nor that of another sheet.
 */
public final class SheetNames {

  private static final int LONGEST = 31;

  /** Those, and signs that programs read as part of an address in a link. */
  private static final Pattern FORBIDDEN = Pattern.compile("[\\\\/?*\\[\\]:#!\\p{Cf}]");

  private SheetNames() {}

  /**
   * A name for each text, in order, all different.
   *
   * @param word what they begin with
   */
  public static List<String> of(String word, List<String> texts) {
    Set<String> taken = new HashSet<>();
    List<String> names = new ArrayList<>();
    for (String text : texts) {
      String whole = word + " " + clean(text);
      String name = cut(whole, LONGEST);
      for (int copy = 2; !taken.add(name.toLowerCase(Locale.ROOT)); copy++) {
        String number = " (" + copy + ")";
        name = cut(whole, LONGEST - number.length()) + number;
      }
      names.add(name);
    }
    return List.copyOf(names);
  }

  /** Inside, an apostrophe would have to be doubled in every link: it becomes a typeset one. */
  private static String clean(String text) {
    String safe = FORBIDDEN.matcher(SafeText.of(text)).replaceAll("_").replace('\'', '’');
    return safe.replaceAll("\\s+", " ");
  }

  private static String cut(String name, int longest) {
    int end = Math.min(longest, name.length());
    boolean splitsPair = end < name.length() && Character.isHighSurrogate(name.charAt(end - 1));
    return name.substring(0, splitsPair ? end - 1 : end).strip();
  }
}

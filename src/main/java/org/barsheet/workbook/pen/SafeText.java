package org.barsheet.workbook.pen;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text of other people made safe for a cell. */
public final class SafeText {

  /** Characters a cell may hold (ECMA-376, repeated in support.microsoft.com's specifications). */
  private static final int LONGEST = 32_767;

  /**
   * Control characters but the line feed, signs that turn the direction of writing, halves of
   * characters, and what XML 1.0 cannot hold.
   */
  private static final Pattern UNWANTED =
      Pattern.compile(
          "[\\p{Cc}\\p{Cs}\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069\\uFFFE\\uFFFF&&[^\\n]]");

  /** A cell reads {@code _x0041_} as the letter A (ECMA-376 part 1, 22.9.2.19, ST_Xstring). */
  private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private SafeText() {}

  /** The text without what a cell cannot hold, cut at the length a cell can hold. */
  public static String of(String text) {
    String plain = text.indexOf('\t') < 0 ? text : text.replace('\t', ' ');
    String clean = UNWANTED.matcher(plain).replaceAll("");
    if (clean.indexOf("_x") >= 0) {
      clean = ESCAPE.matcher(clean).replaceAll(Matcher.quoteReplacement("_x005F_"));
    }
    return clean.length() <= LONGEST ? clean : shortened(clean);
  }

  private static String shortened(String text) {
    int end = LONGEST - 1;
    boolean splitsPair = Character.isHighSurrogate(text.charAt(end - 1));
    return text.substring(0, splitsPair ? end - 1 : end) + "…";
  }

  /**
   * Whether a spreadsheet would take the text for a formula when it is edited or exported: it
   * begins with =, +, -, @ or their full-width twins (OWASP, "CSV Injection").
   */
  static boolean looksLikeFormula(String text) {
    return !text.isEmpty() && "=+-@＝＋－＠".indexOf(text.charAt(0)) >= 0;
  }
}

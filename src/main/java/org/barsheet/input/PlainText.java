package org.barsheet.input;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text as it enters the program. Signs that turn the direction of writing are taken out: they make
 * a name read as another. Halves of characters, which no file can hold, become U+FFFD, as the
 * Unicode Standard advises (chapter 3.9, "U+FFFD Substitution of Maximal Subparts").
 */
public final class PlainText {

  private static final int HALF_OF_A_CHARACTER = 0xFFFD;
  private static final int FIRST_TURN = 0x061C;
  private static final Pattern SIGN = Pattern.compile("\\X");

  private PlainText() {}

  /** The text without them; most texts are left as they are. */
  public static String of(String text) {
    if (isBelowAllOfThem(text)) {
      return text;
    }
    StringBuilder plain = new StringBuilder(text.length());
    text.codePoints()
        .filter(c -> !turnsDirection(c))
        .map(c -> Character.getType(c) == Character.SURROGATE ? HALF_OF_A_CHARACTER : c)
        .forEach(plain::appendCodePoint);
    return plain.toString();
  }

  private static boolean isBelowAllOfThem(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= FIRST_TURN) {
        return false;
      }
    }
    return true;
  }

  /**
   * The beginning of a text, with an ellipsis where more follows; no character is cut in half.
   *
   * @param most characters (code points) that are left, 1 or more
   */
  public static String shortened(String text, int most) {
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most - 1)) + "…";
  }

  /**
   * The sign that stands at a place of a text, as a reader sees it: a letter with its accents, a
   * whole emoji (extended grapheme cluster, UAX #29); "" at the end.
   */
  public static String signAt(String text, int offset) {
    Matcher sign = SIGN.matcher(text).region(offset, text.length());
    return sign.lookingAt() ? sign.group() : "";
  }

  /**
   * Marks, embeddings, overrides and isolates of the Unicode Bidirectional Algorithm (UAX #9, 2),
   * and the deprecated format characters (Unicode Standard, 23.3).
   */
  private static boolean turnsDirection(int c) {
    return c == FIRST_TURN
        || c == 0x200E
        || c == 0x200F
        || (c >= 0x202A && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x206F);
  }
}

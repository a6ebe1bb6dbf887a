package org.barsheet.plan.source;

import java.util.List;

/** A line of a file with a caret under one character; of a long line only what is near. */
final class LineExcerpt {

  private static final int BEFORE = 50;
  private static final int AFTER = 30;

  private LineExcerpt() {}

  static List<String> of(String line, int offset) {
    int from = wholeCharacter(line, Math.max(0, offset - BEFORE));
    int to = wholeCharacter(line, Math.min(line.length(), offset + AFTER));
    String shown = line.substring(from, to).replaceAll("\\p{Cntrl}", " ");
    int columns = shown.codePointCount(0, offset - from);
    int blanks = shown.length() - shown.stripLeading().length();
    int cut = Math.min(blanks, columns);
    return List.of(shown.substring(cut), " ".repeat(columns - cut) + "^");
  }

  /** The place itself, or the one before where it lies inside a character. */
  private static int wholeCharacter(String line, int at) {
    boolean inside =
        at > 0
            && at < line.length()
            && Character.isSurrogatePair(line.charAt(at - 1), line.charAt(at));
    return inside ? at - 1 : at;
  }
}

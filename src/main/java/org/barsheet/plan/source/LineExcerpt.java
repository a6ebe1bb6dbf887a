package org.barsheet.plan.source;

import java.util.List;

/** A line of a file with a caret under one character; of a long line only what is near. */
final class LineExcerpt {

  private static final int BEFORE = 50;
  private static final int AFTER = 30;

  private LineExcerpt() {}

  static List<String> of(String line, int offset) {
    int from = Math.max(0, offset - BEFORE);
    int to = Math.min(line.length(), offset + AFTER);
    String shown = line.substring(from, to).replaceAll("\\p{Cntrl}", " ");
    int columns = shown.codePointCount(0, offset - from);
    int blanks = shown.length() - shown.stripLeading().length();
    int cut = Math.min(blanks, columns);
    return List.of(shown.substring(cut), " ".repeat(columns - cut) + "^");
  }
}

package org.barsheet.plan.edit;

/**
 * The lines of a text.
 *
 * @param text with line feeds as line ends
 */
record Lines(String text) {

  /** Where the line of a character begins. */
  int start(int index) {
    return text.lastIndexOf('\n', index - 1) + 1;
  }

  /** Where it ends, before its line feed. */
  int end(int index) {
    int end = text.indexOf('\n', index);
    return end < 0 ? text.length() : end;
  }

  /** Characters before it on its line. */
  int column(int index) {
    return index - start(index);
  }

  /** Whether nothing but spaces stands before it on its line. */
  boolean isFirst(int index) {
    return text.substring(start(index), index).isBlank();
  }

  /** Where a line's only text, a comment, begins on it; −1 where it holds anything else. */
  int commentColumn(int lineStart) {
    int at = lineStart;
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at < text.length() && text.charAt(at) == '#' ? at - lineStart : -1;
  }

  /** The end of the last of the comments right below that stand deeper than a column. */
  int behindComments(int lineEnd, int column) {
    int end = lineEnd;
    while (end < text.length() && commentColumn(end + 1) > column) {
      end = end(end + 1);
    }
    return end;
  }

  /** Whole lines that go, with the end of the line before where they are the last. */
  Splice without(int from, int end) {
    return end < text.length()
        ? new Splice(from, end + 1, "")
        : new Splice(Math.max(0, from - 1), end, "");
  }
}

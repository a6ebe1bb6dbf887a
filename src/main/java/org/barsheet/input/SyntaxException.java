package org.barsheet.input;

import java.util.List;

/** A short text (a timecode, a place, a length, notes) that does not follow its grammar. */
public final class SyntaxException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String text;
  private final int offset;
  private final String sentence;
  private final String remedy;

  /**
   * Marks one character of a text as the place where it stops making sense.
   *
   * @param text the whole text as typed
   * @param offset index of the offending character, 0 to {@code text.length()}
   * @param sentence what is wrong, without a closing full stop
   * @param remedy what would be accepted
   */
  public SyntaxException(String text, int offset, String sentence, String remedy) {
    super(sentence);
    this.text = text;
    this.offset = Math.max(0, Math.min(offset, text.length()));
    this.sentence = sentence;
    this.remedy = remedy;
  }

  public String text() {
    return text;
  }

  public int offset() {
    return offset;
  }

  public String sentence() {
    return sentence;
  }

  public String remedy() {
    return remedy;
  }

  /** The text, and under it a caret below the offending character. */
  public List<String> excerpt() {
    String shown = text.replaceAll("\\p{Cntrl}", " ");
    int columns = shown.codePointCount(0, offset);
    return List.of(shown, " ".repeat(columns) + "^");
  }
}

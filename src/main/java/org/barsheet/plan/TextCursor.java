package org.barsheet.plan;

import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.input.SyntaxException;

/** Reads a short text from left to right; whatever does not belong is refused where it stands. */
public final class TextCursor {

  /** Digits before the decimal point; more is no bar, frame or length of a film. */
  private static final int MAX_DIGITS = 7;

  /** Decimals; more would be lost when the number is printed. */
  private static final int MAX_DECIMALS = 6;

  private final String text;
  private int at;

  public TextCursor(String text) {
    this.text = text.replaceAll("[\\s\\h]", " ").strip();
  }

  public boolean atEnd() {
    return at == text.length();
  }

  public int offset() {
    return at;
  }

  /** The next character, or a space at the end. */
  char peek() {
    return atEnd() ? ' ' : text.charAt(at);
  }

  public boolean atDigit() {
    return isDigit(peek());
  }

  public void blanks() {
    while (!atEnd() && peek() == ' ') {
      at++;
    }
  }

  /** Takes the expected characters, and the blanks after them, if they come next. */
  public boolean take(String expected) {
    if (!text.startsWith(expected, at)) {
      return false;
    }
    at += expected.length();
    blanks();
    return true;
  }

  /** Takes the expected word, in any case, and the blanks after it, if exactly it comes next. */
  public boolean takeWord(String expected) {
    if (!nextWord().equalsIgnoreCase(expected)) {
      return false;
    }
    at += expected.length();
    blanks();
    return true;
  }

  /** The letters that come next, without taking them; "" where none come. */
  public String nextWord() {
    int end = at;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return text.substring(at, end);
  }

  /** Takes everything up to the next blank, and the blanks after it. */
  public String takeToken() {
    int end = text.indexOf(' ', at);
    String token = text.substring(at, end < 0 ? text.length() : end);
    at += token.length();
    blanks();
    return token;
  }

  /** Everything up to the end, without taking it. */
  String rest() {
    return text.substring(at);
  }

  /** Takes everything up to the end. */
  String takeRest() {
    String rest = rest();
    at = text.length();
    return rest;
  }

  /** A whole number of any sign, and the blanks after it. */
  public int takeWhole(String what, String remedy) {
    int start = at;
    boolean negative = peek() == '-' || peek() == '−';
    at += negative ? 1 : 0;
    String digits = takeDigits(what, remedy);
    if (peek() == '.') {
      throw faultHere(what + " is a whole number", remedy);
    }
    if (digits.length() > MAX_DIGITS) {
      throw fault(start, digits + " is too large a number", remedy);
    }
    blanks();
    return Integer.parseInt(digits) * (negative ? -1 : 1);
  }

  /** A decimal number of 0 or more, exact; blanks after it stay. */
  public BigFraction takeNumber(String what, String remedy) {
    int start = at;
    String whole = takeDigits(what, remedy);
    if (peek() == ',') {
      throw faultHere("use a decimal point, not a comma", "write a point: " + whole + ".5");
    }
    boolean decimals = peek() == '.' && !text.startsWith("..", at);
    at += decimals ? 1 : 0;
    String part = decimals ? takeDigits(what, remedy) : "";
    if (whole.length() > MAX_DIGITS) {
      throw fault(start, text.substring(start, at) + " is too large a number", remedy);
    }
    if (part.length() > MAX_DECIMALS) {
      throw fault(at - part.length() + MAX_DECIMALS, "more than six decimals", remedy);
    }
    return Seconds.parse(text.substring(start, at)).value();
  }

  private String takeDigits(String what, String remedy) {
    int start = at;
    while (atDigit()) {
      at++;
    }
    if (start == at) {
      throw faultHere(what + " is missing here", remedy);
    }
    return text.substring(start, at);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Makes sure that nothing is left over. */
  public void expectEnd(String remedy) {
    if (!atEnd()) {
      throw faultHere("'" + text.substring(at) + "' isn't understood here", remedy);
    }
  }

  public SyntaxException faultHere(String sentence, String remedy) {
    return fault(at, sentence, remedy);
  }

  public SyntaxException fault(int offset, String sentence, String remedy) {
    return new SyntaxException(text, offset, sentence, remedy);
  }

  /** The whole text, blanks at its ends removed. */
  public String text() {
    return text;
  }
}

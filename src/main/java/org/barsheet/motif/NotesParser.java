package org.barsheet.motif;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.SyntaxException;

/** Reads the note grammar of {@link Notes} from left to right. */
final class NotesParser {

  private static final String EXAMPLE = "Write notes as in C5/4 E5/8 r/8 G5/4+16";
  private static final int MOST_DIGITS = 9;

  /** Semitones above C of the letters A to G. */
  private static final int[] SEMITONES = {9, 11, 0, 2, 4, 5, 7};

  private final String text;
  private int at;

  NotesParser(String text) {
    this.text = text;
  }

  List<MotifNote> line() {
    List<MotifNote> notes = new ArrayList<>();
    BigFraction onset = BigFraction.ZERO;
    skipSpaces();
    while (at < text.length()) {
      boolean rest = text.charAt(at) == 'r';
      int pitch = rest ? skipRest() : pitch();
      BigFraction length = length();
      endOfNote();
      if (!rest) {
        notes.add(new MotifNote(onset, length, pitch));
      }
      onset = rest && notes.isEmpty() ? BigFraction.ZERO : onset.add(length);
    }
    if (notes.isEmpty()) {
      throw stop(text.length(), "no note here", EXAMPLE);
    }
    return notes;
  }

  private int skipRest() {
    at++;
    return 0;
  }

  /** Letter, accidentals and octave. */
  private int pitch() {
    int start = at;
    int semitone = letter();
    semitone += accidentals();
    int octave = octave();
    int pitch = 12 * (octave + 1) + semitone;
    if (pitch < 0 || pitch > 127) {
      throw stop(
          start,
          text.substring(start, at) + " is outside the MIDI range",
          "The lowest note is C-1, the highest G9");
    }
    return pitch;
  }

  private int letter() {
    char letter = text.charAt(at);
    if (letter >= 'a' && letter <= 'g') {
      throw stop(at, "note letters are capitals", "Write " + Character.toUpperCase(letter));
    }
    if (letter == 'R') {
      throw stop(at, "a rest is a small r", "Write r/8");
    }
    if (letter < 'A' || letter > 'G') {
      throw stop(at, "no note begins with \"" + shown() + "\"", EXAMPLE);
    }
    at++;
    return SEMITONES[letter - 'A'];
  }

  private int accidentals() {
    refuseSigns();
    char sign = peek();
    if (sign != '#' && sign != 'b') {
      return 0;
    }
    int step = sign == '#' ? 1 : -1;
    int sum = 0;
    while (peek() == sign && Math.abs(sum) < 2) {
      sum += step;
      at++;
    }
    refuseSigns();
    if (peek() == '#' || peek() == 'b') {
      throw stop(
          at, "a letter takes one or two of the same accidental", "Write C#5, Cb5, C##5 or Cbb5");
    }
    return sum;
  }

  /** The musical signs look right and are easily pasted, so they get an answer of their own. */
  private void refuseSigns() {
    String asTyped =
        switch (peek()) {
          case '\u266f', '\u266e', '\u266d' -> "Write # for a sharp, b for a flat";
          case '\u2212', '\u2013' -> "Write the octave with the hyphen of the keyboard, C-1";
          default -> "";
        };
    if (!asTyped.isEmpty()) {
      throw stop(at, "\"" + shown() + "\" isn't understood here", asTyped);
    }
  }

  private int octave() {
    refuseSigns();
    int start = at;
    boolean below = peek() == '-';
    if (below) {
      at++;
    }
    if (!isDigit(peek())) {
      throw stop(at, "the octave is missing", "Write the octave after the letter: middle C is C4");
    }
    int octave = peek() - '0';
    at++;
    if (isDigit(peek()) || (below && octave != 1)) {
      throw stop(start, "octaves go from -1 to 9", "Middle C is C4");
    }
    return below ? -1 : octave;
  }

  private BigFraction length() {
    if (peek() != '/') {
      throw stop(at, "the length is missing", "Write a slash and a length: /4 is a quarter note");
    }
    at++;
    BigFraction whole = fraction();
    while (peek() == '+') {
      at++;
      whole = whole.add(fraction());
    }
    return whole.multiply(4);
  }

  /** The n of 1/n of a whole note. */
  private BigFraction fraction() {
    int start = at;
    while (isDigit(peek())) {
      at++;
    }
    if (at == start) {
      throw stop(at, "a length is a number", "4 is a quarter note, 12 a triplet eighth");
    }
    if (at - start > MOST_DIGITS) {
      throw stop(start, "a length this short cannot be played", "4 is a quarter note");
    }
    int n = Integer.parseInt(text.substring(start, at));
    if (n == 0) {
      throw stop(start, "there is no 1/0 of a whole note", "1 is a whole note, 4 a quarter note");
    }
    return BigFraction.of(1, n);
  }

  private void endOfNote() {
    if (at < text.length() && !isSpace(peek())) {
      throw stop(
          at, "\"" + shown() + "\" does not belong after a length", "Put spaces between notes");
    }
    skipSpaces();
  }

  private void skipSpaces() {
    while (at < text.length() && isSpace(peek())) {
      at++;
    }
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** The next character, or a control character at the end of the text. */
  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private String shown() {
    return text.substring(at, text.offsetByCodePoints(at, 1));
  }

  private SyntaxException stop(int offset, String sentence, String remedy) {
    return new SyntaxException(text, offset, sentence, remedy);
  }
}

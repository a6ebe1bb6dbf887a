package org.barsheet.motif;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.SyntaxException;

/**
 * The note grammar: {@code C5/4 E5/8 r/8 G5/4+16}.
 *
 * <p>A note is a letter A to G, one or two {@code #} or {@code b}, an octave −1 to 9 in scientific
 * pitch notation (middle C is C4, MIDI key 60) and a length; {@code r} is a rest. A length is
 * {@code /n}, 1/n of a whole note for any n from 1, and {@code +} ties further values of the same
 * note to it. Notes stand one after another, parted by spaces.
 */
public final class Notes {

  private static final String[] NAMES = {
    "C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"
  };

  private static final BigInteger FINEST = BigInteger.valueOf(10_000_000);
  private static final int ROUNDED = 1920;

  private Notes() {}

  /**
   * Reads a line of notes.
   *
   * @return the notes in order; the first begins at 0, whatever rests stand before it
   * @throws SyntaxException at the first character that does not belong
   */
  public static List<MotifNote> parse(String text) {
    return new NotesParser(text).line();
  }

  /**
   * Writes a line of notes so that {@link #parse} reads the same again. Gaps between notes become
   * rests; a note that still sounds when the next begins is cut there. (A length finer than
   * 1/10,000,000 of a whole note is rounded to 1/1920.)
   *
   * @param notes in order of onset
   */
  public static String print(List<MotifNote> notes) {
    List<String> tokens = new ArrayList<>();
    for (int i = 0; i < notes.size(); i++) {
      MotifNote note = notes.get(i);
      BigFraction end = note.onset().add(note.length());
      if (i + 1 == notes.size()) {
        tokens.add(name(note.pitch()) + value(note.length()));
        break;
      }
      BigFraction next = notes.get(i + 1).onset();
      BigFraction length = end.compareTo(next) > 0 ? next.subtract(note.onset()) : note.length();
      if (length.signum() > 0) {
        tokens.add(name(note.pitch()) + value(length));
      }
      if (next.compareTo(end) > 0) {
        tokens.add("r" + value(next.subtract(end)));
      }
    }
    return String.join(" ", tokens);
  }

  /** A MIDI key in scientific pitch notation: 60 is {@code C4}, 61 is {@code C#4}. */
  public static String name(int pitch) {
    return NAMES[Math.floorMod(pitch, 12)] + (Math.floorDiv(pitch, 12) - 1);
  }

  /**
   * A length as {@code /n} and ties. Every fraction p/q of a whole note is a sum of fractions 1/n
   * whose n divide q; the longest come first.
   */
  private static String value(BigFraction quarters) {
    BigFraction whole = printable(quarters.divide(4));
    long left = whole.getNumerator().longValueExact();
    long denominator = whole.getDenominator().longValueExact();
    StringBuilder text = new StringBuilder();
    for (long n = 1; left > 0; n++) {
      long share = denominator / n;
      while (denominator % n == 0 && share <= left) {
        text.append(text.isEmpty() ? '/' : '+').append(n);
        left -= share;
      }
    }
    return text.toString();
  }

  /** The fraction itself, or where its denominator is beyond all music the nearest 1/1920. */
  private static BigFraction printable(BigFraction whole) {
    if (whole.getDenominator().compareTo(FINEST) <= 0) {
      return whole;
    }
    BigFraction doubled = whole.multiply(2 * ROUNDED).add(1);
    BigInteger nearest =
        doubled.getNumerator().divide(doubled.getDenominator().multiply(BigInteger.TWO));
    return BigFraction.of(nearest.max(BigInteger.ONE), BigInteger.valueOf(ROUNDED));
  }
}

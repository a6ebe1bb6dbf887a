package org.barsheet.plan;

import java.math.BigInteger;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads {@code 4 bars}, {@code 3 beats}, {@code 2.5 s}, {@code 60 f} and {@code 2..4 bars}. */
public final class LengthGrammar {

  static final String ACCEPTED = "write 4 bars, 3 beats, 2.5 s or 60 f";

  private static final String ACCEPTED_AS_LENGTH =
      ACCEPTED + "; 2..4 bars names a least and a most";

  private LengthGrammar() {}

  /** A whole text that is a length. */
  static Length parse(String text) {
    TextCursor cursor = new TextCursor(text);
    Length length = read(cursor, ACCEPTED_AS_LENGTH);
    cursor.expectEnd(ACCEPTED_AS_LENGTH);
    return length;
  }

  /** One amount, with other words after it. */
  public static Length readAmount(TextCursor cursor, String remedy) {
    int start = cursor.offset();
    Length length = read(cursor, remedy);
    if (length.isRange()) {
      throw cursor.fault(start, "one amount is expected here, not a least and a most", remedy);
    }
    return length;
  }

  private static Length read(TextCursor cursor, String remedy) {
    int start = cursor.offset();
    BigFraction least = cursor.takeNumber("a number", remedy);
    cursor.blanks();
    BigFraction most = cursor.take("..") ? mostAfter(least, cursor, remedy) : least;
    int end = cursor.offset();
    Length.Unit unit = unit(cursor, remedy);
    if (unit == Length.Unit.FRAMES && !(isWhole(least) && isWhole(most))) {
      int point = cursor.text().substring(0, end).lastIndexOf('.');
      throw cursor.fault(Math.max(start, point), "frames are whole numbers", remedy);
    }
    return new Length(unit, least, most);
  }

  private static BigFraction mostAfter(BigFraction least, TextCursor cursor, String remedy) {
    int start = cursor.offset();
    BigFraction most = cursor.takeNumber("the larger number", remedy);
    if (most.compareTo(least) < 0) {
      throw cursor.fault(
          start,
          Length.decimal(most) + " is less than " + Length.decimal(least),
          "write the smaller number first: 2..4 bars");
    }
    cursor.blanks();
    return most;
  }

  private static boolean isWhole(BigFraction number) {
    return number.getDenominator().equals(BigInteger.ONE);
  }

  private static Length.Unit unit(TextCursor cursor, String remedy) {
    String word = cursor.nextWord().toLowerCase(Locale.ROOT);
    Length.Unit unit =
        switch (word) {
          case "bar", "bars" -> Length.Unit.BARS;
          case "beat", "beats" -> Length.Unit.BEATS;
          case "s" -> Length.Unit.SECONDS;
          case "f" -> Length.Unit.FRAMES;
          case "" -> throw cursor.faultHere("a length needs its unit", remedy);
          default -> throw cursor.faultHere("no unit of length is called '" + word + "'", remedy);
        };
    cursor.takeWord(word);
    return unit;
  }
}

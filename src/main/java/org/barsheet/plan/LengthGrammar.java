package org.barsheet.plan;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the lengths that {@link Length#parse} names. */
public final class LengthGrammar {

  static final String ACCEPTED = "write 4 bars, 3 beats, 2.5 s or 60 f";

  private static final String ACCEPTED_AS_LENGTH =
      ACCEPTED + "; or 2..4 bars, at least 8 bars, at most 3 s";

  private static final Pattern DECIMALS = Pattern.compile("(?<=\\d)\\.0*[1-9]");

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
      throw cursor.fault(start, "give one amount here, not a range", remedy);
    }
    return length;
  }

  private static Length read(TextCursor cursor, String remedy) {
    if (!cursor.takeWord("at")) {
      int start = cursor.offset();
      BigFraction least = cursor.takeNumber("a number", remedy);
      cursor.blanks();
      BigFraction most = cursor.take("..") ? mostAfter(least, cursor, remedy) : least;
      return new Length(unit(start, cursor, remedy), least, most);
    }
    boolean atLeast = cursor.takeWord("least");
    if (!atLeast && !cursor.takeWord("most")) {
      throw cursor.faultHere("least or most is missing here", remedy);
    }
    int start = cursor.offset();
    BigFraction amount = cursor.takeNumber("a number", remedy);
    cursor.blanks();
    Length.Unit unit = unit(start, cursor, remedy);
    return atLeast
        ? new Length(unit, amount, Length.NO_MOST)
        : new Length(unit, BigFraction.ZERO, amount);
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

  /** The unit of the numbers that were read from a character on. */
  private static Length.Unit unit(int start, TextCursor cursor, String remedy) {
    String numbers = cursor.text().substring(start, cursor.offset());
    Length.Unit unit = unit(cursor, remedy);
    Matcher part = DECIMALS.matcher(numbers);
    if (unit == Length.Unit.FRAMES && part.find()) {
      throw cursor.fault(start + part.start(), "frames are whole numbers", remedy);
    }
    return unit;
  }

  private static Length.Unit unit(TextCursor cursor, String remedy) {
    String word = cursor.nextWord().toLowerCase(Locale.ROOT);
    Length.Unit unit =
        switch (word) {
          case "bar", "bars" -> Length.Unit.BARS;
          case "beat", "beats" -> Length.Unit.BEATS;
          case "s" -> Length.Unit.SECONDS;
          case "f" -> Length.Unit.FRAMES;
          case "" -> throw cursor.faultHere("this length has no unit", remedy);
          default -> throw cursor.faultHere("no unit is called '" + word + "'", remedy);
        };
    cursor.takeWord(word);
    return unit;
  }
}

package org.barsheet.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.input.SyntaxException;

/** Reads amounts with their units. Each refuses what is left over, at the character. */
public final class Measures {

  private static final Map<String, Double> MILLIMETERS = Map.of("mm", 1.0, "cm", 10.0, "in", 25.4);
  private static final String LENGTH_UNITS = "write mm, cm or in: 40 mm";

  private Measures() {}

  /** {@code 40 mm}, {@code 4 cm}, {@code 1.5 in}; more than 0. */
  public static double millimeters(String text) {
    TextCursor cursor = new TextCursor(text);
    double millimeters = takeMillimeters(cursor);
    cursor.expectEnd(LENGTH_UNITS);
    return millimeters;
  }

  public static double takeMillimeters(TextCursor cursor) {
    double amount = takePositive(cursor, "a length", LENGTH_UNITS);
    cursor.blanks();
    String unit = cursor.nextWord();
    Double factor = MILLIMETERS.get(unit.toLowerCase(Locale.ROOT));
    if (factor == null) {
      throw cursor.faultHere("a unit is missing here", LENGTH_UNITS);
    }
    cursor.takeWord(unit);
    return amount * factor;
  }

  private static double takePositive(TextCursor cursor, String what, String remedy) {
    int start = cursor.offset();
    double amount = cursor.takeNumber(what, remedy).doubleValue();
    if (amount <= 0) {
      throw cursor.fault(start, "expected " + what + " above 0", remedy);
    }
    return amount;
  }

  /** {@code 90 deg} or {@code 90°}; more than 0, at most 180. */
  public static double degrees(String text) {
    String remedy = "write an angle up to 180 deg: 90 deg";
    return upTo(text, 180, List.of("deg", "°"), "an angle", remedy);
  }

  /** {@code 80 %}; more than 0, at most 100. */
  public static double percent(String text) {
    return upTo(text, 100, List.of("%"), "a share", "write a share up to 100 %: 80 %");
  }

  /** {@code 0.25 px}: more than 0 of a unit, or of its plural. */
  public static double amount(String text, String unit, String example) {
    TextCursor cursor = new TextCursor(text);
    String remedy = "write " + example;
    double amount = takePositive(cursor, "a number", remedy);
    cursor.blanks();
    if (!cursor.take(unit + "s") && !cursor.take(unit)) {
      throw cursor.faultHere(unit + " is expected here", remedy);
    }
    cursor.expectEnd(remedy);
    return amount;
  }

  private static double upTo(
      String text, double most, List<String> units, String what, String remedy) {
    TextCursor cursor = new TextCursor(text);
    double amount = takePositive(cursor, what, remedy);
    cursor.blanks();
    if (units.stream().noneMatch(cursor::take)) {
      throw cursor.faultHere(units.get(0) + " is expected here", remedy);
    }
    cursor.expectEnd(remedy);
    if (amount > most) {
      throw cursor.fault(0, "can't be more than " + plain(most) + " " + units.get(0), remedy);
    }
    return amount;
  }

  /** {@code 2 s}, {@code 48 f}; with a minus sign where it may lie before. */
  public static Seconds time(String text, FrameRate rate, boolean mayBeNegative) {
    TextCursor cursor = new TextCursor(text);
    String remedy = "write seconds or frames: 2.5 s or 60 f";
    BigFraction sign = mayBeNegative ? takeSign(cursor) : BigFraction.ONE;
    Length length = LengthGrammar.readAmount(cursor, remedy);
    cursor.expectEnd(remedy);
    return switch (length.unit()) {
      case SECONDS -> new Seconds(length.most().multiply(sign));
      case FRAMES -> rate.frameDuration().times(length.most().multiply(sign));
      case BARS, BEATS -> throw cursor.fault(0, "a length in bars can't be used here", remedy);
    };
  }

  /** {@code 12 f}, or with a minus sign where it may be less than 0. */
  public static int frames(String text, boolean mayBeNegative) {
    TextCursor cursor = new TextCursor(text);
    String remedy = mayBeNegative ? "write frames: 2 f or -1 f" : "write frames: 12 f";
    BigFraction sign = mayBeNegative ? takeSign(cursor) : BigFraction.ONE;
    Length length = LengthGrammar.readAmount(cursor, remedy);
    if (length.unit() != Length.Unit.FRAMES) {
      throw cursor.fault(0, "expected a number of frames", remedy);
    }
    cursor.expectEnd(remedy);
    return length.most().multiply(sign).intValue();
  }

  private static BigFraction takeSign(TextCursor cursor) {
    return cursor.take("-") || cursor.take("−") ? BigFraction.of(-1) : BigFraction.ONE;
  }

  /** A plain number of 0 or more, without a unit. */
  public static double number(String text) {
    TextCursor cursor = new TextCursor(text);
    double number = cursor.takeNumber("a number", "write a number: 2.5").doubleValue();
    cursor.expectEnd("write a number without a unit: 2.5");
    return number;
  }

  /** A plain number of more than 0, without a unit. */
  public static double positive(String text) {
    double number = number(text);
    if (number <= 0) {
      throw new SyntaxException(text, 0, "expected a number above 0", "write a number: 2.5");
    }
    return number;
  }

  /** A whole number from a least to a most. */
  public static int whole(String text, int least, int most) {
    TextCursor cursor = new TextCursor(text);
    String remedy = "write a whole number from " + least + " to " + most;
    int number = cursor.takeWhole("a whole number", remedy);
    cursor.expectEnd(remedy);
    if (number < least || number > most) {
      throw cursor.fault(0, number + " is out of range", remedy);
    }
    return number;
  }

  /** {@code 24x13.5}: two numbers of more than 0. */
  public static double[] pair(String text, String example) {
    TextCursor cursor = new TextCursor(text);
    String remedy = "write " + example;
    double width = takePositive(cursor, "a width", remedy);
    cursor.blanks();
    if (!cursor.take("x") && !cursor.take("X") && !cursor.take("×")) {
      throw cursor.faultHere("x is expected here", remedy);
    }
    double height = takePositive(cursor, "a height", remedy);
    cursor.expectEnd(remedy);
    return new double[] {width, height};
  }

  /** {@code 1920x1080}: whole pixels, 1 to 100,000 each way. */
  public static int[] pixels(String text, String example) {
    double[] pair = pair(text, example);
    if (!isPixels(pair[0]) || !isPixels(pair[1])) {
      throw new SyntaxException(
          text, 0, "pixels are whole numbers up to 100,000", "write " + example);
    }
    return new int[] {(int) pair[0], (int) pair[1]};
  }

  private static boolean isPixels(double number) {
    return number == Math.rint(number) && number <= 100_000;
  }

  /** {@code #28786E} as RRGGBB without '#', in capitals. */
  public static String color(String text) {
    String stripped = text.strip();
    if (!stripped.matches("#[0-9A-Fa-f]{6}")) {
      throw new SyntaxException(
          stripped,
          colorPrefix(stripped),
          "a color is # and six digits 0 to F",
          "write \"#28786E\", with the quotes in YAML");
    }
    return stripped.substring(1).toUpperCase(Locale.ROOT);
  }

  private static int colorPrefix(String text) {
    int good = text.startsWith("#") ? 1 : 0;
    while (good > 0 && good < Math.min(7, text.length()) && isHex(text.charAt(good))) {
      good++;
    }
    return good;
  }

  private static boolean isHex(char c) {
    return Character.digit(c, 16) >= 0 && c < 128;
  }

  /** {@code 0.5, 1, 2.25}: numbers of any sign, in the order written. */
  public static double value(String text) {
    TextCursor cursor = new TextCursor(text);
    double sign = cursor.take("-") || cursor.take("−") ? -1 : 1;
    double number = cursor.takeNumber("a number", "write a number: 2.5").doubleValue();
    cursor.expectEnd("write numbers without a unit: [0.5, 1, 2]");
    return sign * number;
  }

  /** {@code 3/8} of a whole note, in quarter notes. */
  public static BigFraction noteValue(String text) {
    TextCursor cursor = new TextCursor(text);
    String remedy = "write a share of a whole note: 3/8 is a dotted quarter";
    int top = cursor.takeWhole("a whole number", remedy);
    if (!cursor.take("/")) {
      throw cursor.faultHere("'/' is expected here", remedy);
    }
    int bottom = cursor.takeWhole("a whole number", remedy);
    cursor.expectEnd(remedy);
    if (top < 1 || bottom < 1 || top > 64 || bottom > 128) {
      throw cursor.fault(0, "no beat is this long", remedy);
    }
    return BigFraction.of(4L * top, bottom);
  }

  /** A decimal as short as it can be written: {@code 13.5}, {@code 24}. */
  public static String plain(double number) {
    return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
  }
}

package org.barsheet.plan.read;

import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.plan.Slow;
import org.barsheet.plan.TextCursor;

/**
 * Reads {@code whole}, {@code left 1 top 4.6 width 6} and {@code whole to left 1 top 4.6 width 6}.
 */
final class FieldText {

  private static final String ACCEPTED =
      "write whole, left 1 top 4.6 width 6, or two of them with to between";

  private FieldText() {}

  /**
   * A field as asked for.
   *
   * @param to where the camera moves to, if it moves
   */
  record Moving(Side from, Optional<Side> to, Slow slow) {}

  /** The whole artwork, or a rectangle of it whose height may be left to the frame. */
  record Side(boolean whole, double left, double top, double width, OptionalDouble height) {

    static final Side WHOLE = new Side(true, 0, 0, 0, OptionalDouble.empty());
  }

  static Moving parse(String text) {
    TextCursor cursor = new TextCursor(text);
    Side from = side(cursor);
    Optional<Side> to = cursor.takeWord("to") ? Optional.of(side(cursor)) : Optional.empty();
    Slow slow = Slow.NONE;
    if (to.isPresent() && cursor.takeWord("slow")) {
      int start = cursor.offset();
      String word = cursor.takeToken();
      slow =
          PanelSection.SLOW
              .find(word)
              .orElseThrow(
                  () -> cursor.fault(start, "'" + word + "' is not known here", SLOW_REMEDY));
    }
    cursor.expectEnd(ACCEPTED);
    return new Moving(from, to, slow);
  }

  private static final String SLOW_REMEDY = "write slow start, slow end, slow both or slow none";

  static Side parseSide(String text) {
    TextCursor cursor = new TextCursor(text);
    Side side = side(cursor);
    cursor.expectEnd("write whole or left 1 top 4.6 width 6");
    return side;
  }

  private static Side side(TextCursor cursor) {
    if (cursor.takeWord("whole")) {
      return Side.WHOLE;
    }
    double left = amount(cursor, "left");
    double top = amount(cursor, "top");
    int start = cursor.offset();
    double width = amount(cursor, "width");
    OptionalDouble height = OptionalDouble.empty();
    if (cursor.nextWord().equalsIgnoreCase("height")) {
      height = OptionalDouble.of(amount(cursor, "height"));
    }
    if (width <= 0 || height.orElse(1) <= 0) {
      throw cursor.fault(start, "a field must be wider and higher than 0", ACCEPTED);
    }
    return new Side(false, left, top, width, height);
  }

  private static double amount(TextCursor cursor, String word) {
    if (!cursor.takeWord(word)) {
      throw cursor.faultHere("'" + word + "' and a number are expected here", ACCEPTED);
    }
    double amount = cursor.takeNumber("a number", ACCEPTED).doubleValue();
    cursor.blanks();
    return amount;
  }
}

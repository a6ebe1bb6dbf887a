package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.barsheet.input.SyntaxException;

/**
 * Printed bar numbers in the order played: repeats, endings, da capo and dal segno all come down to
 * ranges, {@code 1-16, 9-15, 17-40}.
 *
 * @param ranges at least one
 */
public record PlayedOrder(List<Range> ranges) {

  private static final int MOST_BARS = 100_000;
  private static final String REMEDY = "write ranges of bar numbers, \"1-16, 9-15, 17-40\"";
  private static final Pattern RANGE = Pattern.compile("(\\d{1,6})(?:\\s*[-–]\\s*(\\d{1,6}))?");

  public PlayedOrder {
    ranges = List.copyOf(ranges);
  }

  /**
   * Bars one after the other.
   *
   * @param first printed number
   * @param last printed number, at least {@code first}
   */
  public record Range(int first, int last) {
    int length() {
      return last - first + 1;
    }

    @Override
    public String toString() {
      return first == last ? Integer.toString(first) : first + "-" + last;
    }
  }

  /**
   * Reads an order.
   *
   * @throws SyntaxException if the text is none
   */
  public static PlayedOrder parse(String text) {
    List<Range> ranges = new ArrayList<>();
    int offset = 0;
    int bars = 0;
    for (String piece : text.split(",", -1)) {
      Range range = parseRange(text, piece, offset + leadingBlanks(piece));
      bars += range.length();
      if (bars > MOST_BARS) {
        throw new SyntaxException(
            text, offset, "these are more than " + MOST_BARS + " bars", REMEDY);
      }
      ranges.add(range);
      offset += piece.length() + 1;
    }
    return new PlayedOrder(ranges);
  }

  private static int leadingBlanks(String piece) {
    return piece.isBlank() ? 0 : piece.length() - piece.stripLeading().length();
  }

  private static Range parseRange(String text, String piece, int offset) {
    Matcher range = RANGE.matcher(piece.strip());
    if (!range.matches()) {
      throw new SyntaxException(text, offset, "expected a bar number or a range here", REMEDY);
    }
    int first = Integer.parseInt(range.group(1));
    int last = range.group(2) == null ? first : Integer.parseInt(range.group(2));
    if (last < first) {
      throw new SyntaxException(
          text, offset, "the range runs backwards from " + first + " to " + last, REMEDY);
    }
    return new Range(first, last);
  }

  /** Every printed number in the order played. */
  public List<Integer> numbers() {
    List<Integer> numbers = new ArrayList<>();
    for (Range range : ranges) {
      for (int number = range.first(); number <= range.last(); number++) {
        numbers.add(number);
      }
    }
    return numbers;
  }

  /** What {@link #parse} reads. */
  @Override
  public String toString() {
    return ranges.stream().map(Range::toString).collect(Collectors.joining(", "));
  }
}

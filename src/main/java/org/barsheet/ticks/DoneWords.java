package org.barsheet.ticks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people write into a box under <i>done</i>: a tick for everything in the row, {@code 1-17}
 * for some photographs of a movement, {@code again 12-17} for those to be taken again, or {@code
 * again}. In front, "again" holds for all that follows; behind, for that part alone.
 */
public final class DoneWords {

  /** How we write that everything in a row is taken. */
  private static final String ALL = "√";

  private static final Pattern TICK =
      Pattern.compile(
          "x|√|\\u2713|\\u2714|ok|yes|y|done|taken|all|true|1 ?/ ?1", Pattern.CASE_INSENSITIVE);
  private static final Pattern PART =
      Pattern.compile(
          "(again |retake |strike )?0*(\\d{1,6})(?: ?(?:-|–|to) ?0*(\\d{1,6}))?( again)?");
  private static final String OLDER = "(older)";

  private DoneWords() {}

  /**
   * Reads a box.
   *
   * @param text as written
   * @param names the photographs of the row, in order; those of a movement end in their number
   * @return photographs to marks, in order; empty if nobody can make it out
   */
  public static Optional<Map<String, Mark>> read(String text, List<String> names) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Map<String, Mark> marks = new LinkedHashMap<>();
    if (plain.isEmpty() || plain.endsWith(OLDER)) {
      return Optional.of(marks);
    }
    boolean single = names.size() == 1;
    if (plain.equals(Mark.AGAIN.word())
        || TICK.matcher(plain).matches()
        || (single && plain.equals("1"))) {
      Mark mark = plain.equals(Mark.AGAIN.word()) ? Mark.AGAIN : Mark.TAKEN;
      names.forEach(name -> marks.put(name, mark));
      return Optional.of(marks);
    }
    boolean again = false;
    for (String part : plain.split(" *[,;] *", -1)) {
      Matcher range = PART.matcher(part);
      if (!range.matches()) {
        return Optional.empty();
      }
      again |= range.group(1) != null;
      Mark mark = again || range.group(4) != null ? Mark.AGAIN : Mark.TAKEN;
      int from = Integer.parseInt(range.group(2));
      int to = range.group(3) == null ? from : Integer.parseInt(range.group(3));
      if (!mark(marks, names, from, to, mark)) {
        return Optional.empty();
      }
    }
    return Optional.of(marks);
  }

  /** Marks a range; none where a number in it is no photograph of the row at either end. */
  private static boolean mark(
      Map<String, Mark> marks, List<String> names, int from, int to, Mark mark) {
    boolean any = false;
    for (String name : names) {
      int number = number(name);
      if (number >= from && number <= to) {
        marks.put(name, mark);
        any = true;
      }
    }
    return any && to <= names.stream().mapToInt(DoneWords::number).max().orElse(-1);
  }

  /** The number a photograph of a movement ends in, −1 where it ends in none. */
  static int number(String name) {
    String last = name.substring(name.lastIndexOf(' ') + 1);
    return last.matches("\\d{3,6}") ? Integer.parseInt(last) : -1;
  }

  /** What we write for marks of a row, so that it reads back as the same; "" for none. */
  public static String of(Map<String, Mark> marks, List<String> names) {
    if (names.stream().allMatch(name -> marks.get(name) == Mark.TAKEN)) {
      return ALL;
    }
    if (names.stream().allMatch(name -> marks.get(name) == Mark.AGAIN)) {
      return Mark.AGAIN.word();
    }
    List<String> parts = new ArrayList<>();
    parts.addAll(ranges(marks, names, Mark.TAKEN, ""));
    parts.addAll(ranges(marks, names, Mark.AGAIN, Mark.AGAIN.word() + " "));
    return String.join(", ", parts);
  }

  private static List<String> ranges(
      Map<String, Mark> marks, List<String> names, Mark mark, String word) {
    List<String> ranges = new ArrayList<>();
    for (int from = 0; from < names.size(); from++) {
      if (marks.get(names.get(from)) == mark) {
        int to = from;
        while (to + 1 < names.size() && marks.get(names.get(to + 1)) == mark) {
          to++;
        }
        int first = number(names.get(from));
        int last = number(names.get(to));
        ranges.add(word + (first == last ? "" + first : first + "-" + last));
        from = to;
      }
    }
    return ranges;
  }
}

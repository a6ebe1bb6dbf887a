package org.barsheet.workbook.typed;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The heading of the hidden column of row names. It says which columns people fill in, by permanent
 * name and heading, so that a later run finds them without knowing how this one laid the sheet out.
 */
public final class RowNames {

  private static final String HEADING = "row name";
  private static final String FILLED_IN = HEADING + "; people fill in: ";
  private static final String BETWEEN = " | ";
  private static final String HEADED = " = ";

  private RowNames() {}

  /**
   * The heading over the row names of a sheet.
   *
   * @param theirs the columns that people fill in: permanent name to heading
   */
  public static String heading(Map<String, String> theirs) {
    return theirs.isEmpty()
        ? HEADING
        : theirs.entrySet().stream()
            .map(column -> column.getKey() + HEADED + column.getValue())
            .collect(Collectors.joining(BETWEEN, FILLED_IN, ""));
  }

  static boolean isHeading(String text) {
    return text.startsWith(FILLED_IN);
  }

  /** The columns that people fill in: heading to permanent name. */
  static Map<String, String> fillIns(String heading) {
    return List.of(heading.substring(FILLED_IN.length()).split(" \\| ", -1)).stream()
        .filter(column -> column.contains(HEADED))
        .collect(
            Collectors.toMap(
                column -> column.substring(column.indexOf(HEADED) + HEADED.length()),
                column -> column.substring(0, column.indexOf(HEADED)),
                (first, second) -> first,
                TreeMap::new));
  }
}

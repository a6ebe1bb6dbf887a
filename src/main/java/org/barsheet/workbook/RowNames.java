package org.barsheet.workbook;

import java.util.List;

/**
 * The heading of the hidden column of row names. It says which columns people fill in, so that a
 * later run finds them without knowing how this one laid the sheet out.
 */
final class RowNames {

  private static final String HEADING = "row name";
  private static final String FILLED_IN = HEADING + "; people fill in: ";
  private static final String BETWEEN = " | ";

  private RowNames() {}

  /** The heading over the row names of a sheet. */
  static String heading(List<Column> columns) {
    List<String> theirs =
        columns.stream()
            .filter(column -> column.kind() == Column.Kind.TO_FILL_IN)
            .map(Column::heading)
            .toList();
    return theirs.isEmpty() ? HEADING : FILLED_IN + String.join(BETWEEN, theirs);
  }

  static boolean isHeading(String text) {
    return text.startsWith(FILLED_IN);
  }

  /** Headings of the columns that people fill in. */
  static List<String> fillIns(String heading) {
    return List.of(heading.substring(FILLED_IN.length()).split(" \\| ", -1));
  }
}

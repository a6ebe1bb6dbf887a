package org.barsheet.plan.table;

import java.util.List;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Problems;

/**
 * The cells of a worksheet or a table, as they lie.
 *
 * @param where the whole
 * @param rows from the top; blank rows are left out
 */
record Grid(Where where, List<Row> rows) {

  Grid {
    rows = List.copyOf(rows);
  }

  /** Says in which order its places are read. */
  void reportSeen(Problems problems) {
    problems.seen(where);
    for (Row row : rows) {
      problems.seen(row.where());
      row.cells().forEach(cell -> problems.seen(cell.where()));
    }
  }

  /**
   * A row.
   *
   * @param where the row
   * @param cells those that are not blank, from the left
   */
  record Row(Where where, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A cell that is not blank.
   *
   * @param column counted from 0
   * @param value what stands in it
   * @param covered whether a cell merged over several rows above reaches it
   */
  record Cell(int column, Value value, boolean covered, Where where) {}

  /** What a cell holds. */
  sealed interface Value {}

  /** A text, or a number as its text. */
  record Written(String text) implements Value {}

  /**
   * A time of day or a date, as a spreadsheet program keeps what looks like one.
   *
   * @param days since the program's first day, with the time as a fraction
   * @param date whether it shows a date
   * @param shown as the program would show it
   */
  record Moment(double days, boolean date, String shown) implements Value {}

  /** An error a formula ended in. */
  record Faulty(String shown) implements Value {}
}

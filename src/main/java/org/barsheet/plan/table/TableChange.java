package org.barsheet.plan.table;

import java.util.List;
import java.util.Map;

/**
 * What is to change in a worksheet or a table, by the numbers of rows as a person counts them: of a
 * text, the lines that rows begin on.
 *
 * @param sheet the worksheet's name; "" in a table of text
 * @param cells cells that are to hold another text
 * @param behind the row that new ones come behind
 * @param fresh the new rows: texts by column, counted from 0
 * @param gone rows that go
 * @param columns columns that the plan is read from
 */
public record TableChange(
    String sheet,
    List<Cell> cells,
    int behind,
    List<Map<Integer, String>> fresh,
    List<Integer> gone,
    List<Integer> columns) {

  /**
   * A cell that may be blank or missing.
   *
   * @param row counted from 1
   * @param column counted from 0
   * @param now "" where it is to be blank
   */
  public record Cell(int row, int column, String now) {}

  public TableChange {
    cells = List.copyOf(cells);
    fresh = List.copyOf(fresh);
    gone = List.copyOf(gone);
    columns = List.copyOf(columns);
  }

  boolean isNone() {
    return cells.isEmpty() && fresh.isEmpty() && gone.isEmpty();
  }
}

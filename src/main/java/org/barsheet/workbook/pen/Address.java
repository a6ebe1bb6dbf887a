package org.barsheet.workbook.pen;

import org.apache.poi.ss.util.CellReference;

/**
 * A cell of the workbook.
 *
 * @param sheet name of its sheet
 * @param row from 0
 * @param column from 0
 */
public record Address(String sheet, int row, int column) {

  /** The cell alone, fixed: {@code $A$6}. */
  String absolute() {
    return new CellReference(row, column, true, true).formatAsString();
  }

  /** As links write it: {@code 'Exposure'!A6}. */
  @Override
  public String toString() {
    return "'" + sheet + "'!" + new CellReference(row, column).formatAsString();
  }
}

package org.barsheet.workbook.typed;

import java.util.Optional;

/** What rows were called in the workbook before: a row follows the thing it is about. */
@FunctionalInterface
public interface RowOrigins {

  /** Every row has the name it had. */
  RowOrigins SAME = (sheet, rowName) -> Optional.of(new Origin(rowName, false));

  /**
   * A row before.
   *
   * @param rowName its name
   * @param changed whether what it is about has changed since, so that words about it are older
   */
  record Origin(String rowName, boolean changed) {}

  /**
   * The row before of a row.
   *
   * @param sheet kind of sheet: {@code Exposure}, {@code Cues}, {@code Calls} …
   * @param rowName permanent name of the row
   * @return nothing where the row is about something new
   */
  Optional<Origin> of(String sheet, String rowName);
}

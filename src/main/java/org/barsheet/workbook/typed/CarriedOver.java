package org.barsheet.workbook.typed;

/**
 * How many cells people had typed into went into a new workbook.
 *
 * @param cells that have their row and column in the new workbook
 * @param withoutRow that have none there any more
 * @param readable whether the workbook before could be read; if not, nobody knows what was typed
 */
public record CarriedOver(int cells, int withoutRow, boolean readable) {

  /** Whether everything people had typed is in the new workbook. */
  public boolean everything() {
    return readable && withoutRow == 0;
  }
}

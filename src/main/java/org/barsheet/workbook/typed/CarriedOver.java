package org.barsheet.workbook.typed;

/**
 * How many cells people had typed into went into a new workbook.
 *
 * @param cells that have their row and column in the new workbook
 * @param withoutRow that have none there any more
 */
public record CarriedOver(int cells, int withoutRow) {}

package org.barsheet.production;

import java.nio.file.Path;

/**
 * A workbook that was kept before a new one took its place.
 *
 * @param file where it is
 * @param carriedCells cells people typed into that stand in the new workbook
 * @param cellsWithoutRow cells people typed into that have no row there any more
 */
public record KeptWorkbook(Path file, int carriedCells, int cellsWithoutRow) {}

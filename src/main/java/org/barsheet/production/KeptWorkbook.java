package org.barsheet.production;

import java.nio.file.Path;
import org.barsheet.workbook.typed.CarriedOver;

/**
 * A workbook that was kept before a new one took its place.
 *
 * @param file where it is
 * @param carriedCells cells people typed into that stand in the new workbook
 * @param cellsWithoutRow cells people typed into that have no row there any more
 * @param readable whether it could be read; if not, nothing is carried over
 */
public record KeptWorkbook(Path file, int carriedCells, int cellsWithoutRow, boolean readable) {

  KeptWorkbook(Path file, CarriedOver carried) {
    this(file, carried.cells(), carried.withoutRow(), carried.readable());
  }
}

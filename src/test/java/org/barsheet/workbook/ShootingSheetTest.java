package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.typed.TypedCells;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The order of work on the sheet that people tick. */
class ShootingSheetTest {

  private static final FilmSheet FILM = SampleFilm.harbour().make();
  private static final WrittenBook BOOK = WrittenBook.of(FILM);

  private static List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    int names = BOOK.column("Shooting", "row name");
    for (Row row : BOOK.sheet("Shooting")) {
      if (row.getRowNum() > SheetFrame.HEADING_ROW && !WrittenBook.text(row, names).isEmpty()) {
        rows.add(row);
      }
    }
    return rows;
  }

  @Test
  void every_photograph_is_on_it_and_the_totals_say_how_many() {
    int photographs = BOOK.column("Shooting", "photographs");
    int setups = BOOK.column("Shooting", "setup");
    double taken = 0;
    double inSetups = 0;
    for (Row row : rows()) {
      boolean heads = row.getCell(setups).getCellType() == CellType.NUMERIC;
      inSetups += heads ? WrittenBook.number(row, photographs) : 0;
      taken += heads ? 0 : WrittenBook.number(row, photographs);
    }
    assertThat(taken).isEqualTo(FILM.shooting().photographs()).isEqualTo(inSetups);
    for (Row row : BOOK.sheet("Shooting")) {
      if (WrittenBook.text(row, 1).startsWith("everything")) {
        assertThat(WrittenBook.number(row, photographs)).isEqualTo(taken);
        return;
      }
    }
    throw new AssertionError("there are no totals");
  }

  @Test
  void setups_stand_in_the_order_of_work_with_their_plates() {
    int take = BOOK.column("Shooting", "take, from the top down");
    int number = BOOK.column("Shooting", "setup");
    List<Double> order = new ArrayList<>();
    for (Row row : rows()) {
      if (row.getCell(number).getCellType() == CellType.NUMERIC) {
        order.add(WrittenBook.number(row, number));
      }
    }
    assertThat(order)
        .containsExactlyElementsOf(
            IntStream.rangeClosed(1, FILM.shooting().setups().size())
                .mapToObj(set -> (double) set)
                .toList());
    assertThat(rows()).extracting(row -> WrittenBook.text(row, take)).contains("closed plate");
  }

  @Test
  void a_film_without_reveals_still_needs_the_artwork() throws Exception {
    FilmSheet still = SampleFilm.at(FrameRate.FPS_24).shot("1", "Fog", 100).make();
    try (WrittenBook book = WrittenBook.of(still)) {
      Row first = book.sheet("Shooting").getRow(SheetFrame.FIRST_ROW);
      assertThat(WrittenBook.text(first, 1)).startsWith("the whole artwork at rest");
      Row plate = book.sheet("Shooting").getRow(SheetFrame.FIRST_ROW + 1);
      assertThat(WrittenBook.text(plate, 2)).isEqualTo("artwork as in panel 1");
    }
  }

  @Test
  void what_is_ticked_stays_ticked_in_the_next_workbook(@TempDir Path folder) throws Exception {
    String movement = "movement " + FILM.movements().get(0).name();
    Path saved = folder.resolve("quay.xlsx");
    int done = BOOK.column("Shooting", "done");
    try (WrittenBook book = WrittenBook.of(FILM);
        OutputStream out = Files.newOutputStream(saved)) {
      named(book, movement).getCell(done).setCellValue("x");
      book.book().write(out);
    }
    try (WrittenBook again =
        WrittenBook.of(WorkbookWriter.make(FILM, TypedCells.read(saved)).bytes())) {
      assertThat(named(again, movement).getCell(done)).hasToString("x");
    }
  }

  private static Row named(WrittenBook book, String rowName) {
    for (Row row : book.sheet("Shooting")) {
      if (WrittenBook.text(row, book.column("Shooting", "row name")).equals(rowName)) {
        return row;
      }
    }
    throw new AssertionError("no row " + rowName);
  }
}

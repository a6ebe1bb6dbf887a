package org.barsheet.workbook.typed;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.barsheet.film.FilmSheet;
import org.barsheet.workbook.SampleFilm;
import org.barsheet.workbook.WorkbookWriter;
import org.barsheet.workbook.WrittenBook;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTPhoneticRun;

class TypedCellsTest {

  private static final FilmSheet FILM = SampleFilm.harbour().make();
  private static final byte[] BYTES = WorkbookWriter.bytes(FILM);

  @TempDir private Path folder;

  private interface Typing {
    void into(WrittenBook book);
  }

  /** The workbook made anew after somebody typed into it and saved it. */
  private WrittenBook madeAgain(Typing typing) throws IOException {
    Path saved = folder.resolve("quay.xlsx");
    try (WrittenBook book = WrittenBook.of(BYTES);
        OutputStream out = Files.newOutputStream(saved)) {
      typing.into(book);
      book.book().write(out);
    }
    return WrittenBook.of(WorkbookWriter.make(FILM, TypedCells.read(saved)).bytes());
  }

  private static Row panelRow(WrittenBook book, String name) {
    return row(book, "Timeline", "panel " + name);
  }

  private static Row row(WrittenBook book, String sheet, String rowName) {
    for (Row row : book.sheet(sheet)) {
      for (Cell cell : row) {
        if (cell.toString().equals(rowName)) {
          return row;
        }
      }
    }
    throw new AssertionError("no row " + rowName + " on " + sheet);
  }

  private static Cell notes(WrittenBook book, Row row) {
    return row.getCell(book.column(row.getSheet().getSheetName(), "notes"));
  }

  private static String panel(int index) {
    return FILM.timing().shots().get(index).panel().name();
  }

  @Test
  void notes_and_ticks_on_every_sheet_stand_in_the_next_workbook() throws IOException {
    String frame = "panel " + panel(1) + " frame 3";
    try (WrittenBook again =
        madeAgain(
            book -> {
              notes(book, panelRow(book, panel(0))).setCellValue("too dark");
              notes(book, row(book, "Exposure", frame)).setCellValue("blinked");
              row(book, "Exposure", frame)
                  .getCell(book.column("Exposure", Signs.DONE))
                  .setCellValue(Signs.DONE);
              notes(book, row(book, "Openings", "lamp-1")).setCellValue(12);
            })) {
      assertThat(notes(again, panelRow(again, panel(0)))).hasToString("too dark");
      assertThat(notes(again, panelRow(again, panel(1)))).hasToString("");
      Row shown = row(again, "Exposure", frame);
      assertThat(notes(again, shown)).hasToString("blinked");
      assertThat(shown.getCell(again.column("Exposure", Signs.DONE))).hasToString(Signs.DONE);
      assertThat(notes(again, row(again, "Openings", "lamp-1")).getNumericCellValue())
          .isEqualTo(12);
    }
  }

  @Test
  void what_was_typed_survives_a_second_run_and_gives_the_same_bytes() throws IOException {
    Path saved = folder.resolve("quay.xlsx");
    try (WrittenBook book = WrittenBook.of(BYTES);
        OutputStream out = Files.newOutputStream(saved)) {
      notes(book, panelRow(book, panel(0))).setCellValue("=HYPERLINK(\"x\")");
      book.book().write(out);
    }
    byte[] once = WorkbookWriter.make(FILM, TypedCells.read(saved)).bytes();
    Files.write(saved, once);
    byte[] twice = WorkbookWriter.make(FILM, TypedCells.read(saved)).bytes();
    assertThat(twice).isEqualTo(once);
    try (WrittenBook book = WrittenBook.of(twice)) {
      assertThat(notes(book, panelRow(book, panel(0))).getStringCellValue())
          .isEqualTo("=HYPERLINK(\"x\")");
    }
  }

  @Test
  void a_row_is_known_by_its_hidden_name_wherever_people_sorted_it_to() throws IOException {
    try (WrittenBook again =
        madeAgain(
            book -> {
              notes(book, panelRow(book, panel(0))).setCellValue("first");
              swap(panelRow(book, panel(0)), panelRow(book, panel(1)));
            })) {
      assertThat(notes(again, panelRow(again, panel(0)))).hasToString("first");
      assertThat(notes(again, panelRow(again, panel(1)))).hasToString("");
    }
  }

  private static void swap(Row one, Row other) {
    for (int column = 0; column < one.getLastCellNum(); column++) {
      String text = String.valueOf(one.getCell(column));
      type(one.getCell(column), String.valueOf(other.getCell(column)));
      type(other.getCell(column), text);
    }
  }

  private static void type(Cell cell, String text) {
    cell.setBlank();
    cell.setCellValue(text);
  }

  @Test
  void of_a_row_that_was_copied_by_hand_the_upper_one_counts() throws IOException {
    try (WrittenBook again =
        madeAgain(
            book -> {
              Row upper = panelRow(book, panel(0));
              notes(book, upper).setCellValue("too dark");
              copyToTheEnd(upper);
              notes(book, lastRow(upper)).setCellValue("words in the copy");
            })) {
      assertThat(notes(again, panelRow(again, panel(0)))).hasToString("too dark");
    }
  }

  @Test
  void what_only_the_copy_of_a_row_says_counts_too() throws IOException {
    try (WrittenBook again =
        madeAgain(
            book -> {
              Row upper = panelRow(book, panel(0));
              copyToTheEnd(upper);
              notes(book, lastRow(upper)).setCellValue("words in the copy");
            })) {
      assertThat(notes(again, panelRow(again, panel(0)))).hasToString("words in the copy");
    }
  }

  private static void copyToTheEnd(Row row) {
    Row copy = row.getSheet().createRow(row.getSheet().getLastRowNum() + 1);
    for (Cell cell : row) {
      copy.createCell(cell.getColumnIndex()).setCellValue(cell.toString());
    }
  }

  private static Row lastRow(Row ofItsSheet) {
    return ofItsSheet.getSheet().getRow(ofItsSheet.getSheet().getLastRowNum());
  }

  @Test
  void cells_whose_row_is_gone_are_counted() throws IOException {
    Path saved = folder.resolve("quay.xlsx");
    try (WrittenBook book = WrittenBook.of(BYTES);
        OutputStream out = Files.newOutputStream(saved)) {
      notes(book, panelRow(book, panel(0))).setCellValue("stays");
      Row gone = panelRow(book, panel(1));
      notes(book, gone).setCellValue("its panel is renamed");
      for (Cell cell : gone) {
        if (cell.toString().equals("panel " + panel(1))) {
          type(cell, "panel 99z");
        }
      }
      book.book().write(out);
    }
    assertThat(WorkbookWriter.make(FILM, TypedCells.read(saved)).carried())
        .isEqualTo(new CarriedOver(1, 1, true));
  }

  @Test
  void notes_between_rows_and_below_them_are_counted() throws IOException {
    Path saved = folder.resolve("quay.xlsx");
    try (WrittenBook book = WrittenBook.of(BYTES);
        OutputStream out = Files.newOutputStream(saved)) {
      XSSFSheet timeline = book.sheet("Timeline");
      timeline
          .createRow(timeline.getLastRowNum() + 4)
          .createCell(book.column("Timeline", "notes"))
          .setCellValue("ask about the fog");
      book.book().write(out);
    }
    assertThat(WorkbookWriter.make(FILM, TypedCells.read(saved)).carried())
        .isEqualTo(new CarriedOver(0, 1, true));
  }

  @Test
  void a_workbook_that_was_only_saved_again_holds_nothing_typed() throws IOException {
    Path saved = folder.resolve("quay.xlsx");
    try (WrittenBook book = WrittenBook.of(BYTES);
        OutputStream out = Files.newOutputStream(saved)) {
      book.book().write(out);
    }
    assertThat(TypedCells.read(saved).count()).isZero();
  }

  @Test
  void a_number_reads_the_same_wherever_the_computer_stands() throws IOException {
    Locale before = Locale.getDefault(Locale.Category.FORMAT);
    LocaleUtil.setUserLocale(Locale.GERMANY);
    Locale.setDefault(Locale.Category.FORMAT, Locale.GERMANY);
    try (WrittenBook again =
        madeAgain(book -> notes(book, panelRow(book, panel(0))).setCellValue(1.5))) {
      assertThat(notes(again, panelRow(again, panel(0)))).hasToString("1.5");
    } finally {
      Locale.setDefault(Locale.Category.FORMAT, before);
      LocaleUtil.resetUserLocale();
    }
  }

  /** ECMA-376 part 1, 18.4.6: a phonetic run says how a word of the text is pronounced. */
  @Test
  void how_a_word_is_said_is_not_part_of_it() throws IOException {
    try (WrittenBook again =
        madeAgain(
            book -> {
              XSSFRichTextString text = new XSSFRichTextString("東京");
              CTPhoneticRun said = text.getCTRst().addNewRPh();
              said.setSb(0);
              said.setEb(2);
              said.setT("トウキョウ");
              notes(book, panelRow(book, panel(0))).setCellValue(text);
            })) {
      assertThat(notes(again, panelRow(again, panel(0)))).hasToString("東京");
    }
  }

  @Test
  void a_column_is_known_by_its_heading_wherever_people_moved_it_to() throws IOException {
    try (WrittenBook again =
        madeAgain(
            book -> {
              notes(book, panelRow(book, panel(0))).setCellValue("moved");
              XSSFSheet timeline = book.sheet("Timeline");
              int last = timeline.getRow(SheetFrame.HEADING_ROW).getLastCellNum();
              timeline.shiftColumns(2, last - 1, 1);
            })) {
      assertThat(notes(again, panelRow(again, panel(0)))).hasToString("moved");
    }
  }

  /** Entries rewritten with damaged text: the archive is whole, what it holds is not. */
  @Test
  void a_damaged_workbook_is_read_whole_or_not_at_all() throws IOException {
    Path file = folder.resolve("quay.xlsx");
    Random random = new Random(11);
    for (int trial = 0; trial < 8; trial++) {
      Files.write(file, damaged(random));
      TypedCells typed = TypedCells.read(file);
      assertThat(typed.isReadable() || typed.isEmpty()).isTrue();
    }
  }

  private static byte[] damaged(Random random) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(BYTES));
        ZipOutputStream to = new ZipOutputStream(out)) {
      to.setLevel(0);
      for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
        byte[] content = from.readAllBytes();
        for (int i = 0; i < random.nextInt(3) && content.length > 0; i++) {
          content[random.nextInt(content.length)] = (byte) "<>&\"0Z".charAt(random.nextInt(6));
        }
        to.putNextEntry(new ZipEntry(entry.getName()));
        to.write(content);
        to.closeEntry();
      }
    }
    return out.toByteArray();
  }

  @Test
  void no_workbook_and_one_nobody_typed_into_hold_nothing_typed() throws IOException {
    Path file = folder.resolve("quay.xlsx");
    assertThat(TypedCells.read(file)).isSameAs(TypedCells.NONE);
    Files.write(file, BYTES);
    assertThat(TypedCells.read(file)).isSameAs(TypedCells.NONE);
    assertThat(WorkbookWriter.make(FILM, TypedCells.read(file)).bytes()).isEqualTo(BYTES);
  }

  @Test
  void of_a_file_that_is_no_workbook_or_half_of_one_it_says_that_it_is_not_readable()
      throws IOException {
    Path file = folder.resolve("quay.xlsx");
    for (byte[] bytes :
        List.of(new byte[0], "words".getBytes(UTF_8), Arrays.copyOf(BYTES, BYTES.length / 2))) {
      Files.write(file, bytes);
      assertThat(TypedCells.read(file).isReadable()).isFalse();
      assertThat(TypedCells.read(file).isEmpty()).isTrue();
    }
  }
}

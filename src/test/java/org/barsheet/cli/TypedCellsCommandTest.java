package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code make} over a workbook that somebody typed into: typed and read with a general-purpose
 * spreadsheet library, as people do with a spreadsheet program.
 */
class TypedCellsCommandTest {

  private static final String FOG = "{panel: 1, action: Fog}";
  private static final String LAMP = "{panel: 2, action: A lamp, cue: bar 6}";
  private static final String GULL = "{panel: 1A, action: A gull, cue: bar 4}";

  @TempDir private Path folder = Path.of("set by the test runner");

  private final StringWriter err = new StringWriter();
  private Path sheets = Path.of("");
  private Path book = Path.of("");

  @BeforeEach
  void makeOnce() throws IOException {
    sheets = folder.resolve("sheets");
    book = sheets.resolve("quay.xlsx");
    ShortScore.write(folder.resolve("quay.mid"));
    assertThat(make(FOG, LAMP)).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString()).doesNotContain("typed");
  }

  private int make(String... panels) throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("quay.yaml"),
            """
            title: The quay
            score: quay.mid
            film: {frame-rate: 24}
            panels:
              - %s
            """
                .formatted(String.join("\n  - ", panels)),
            UTF_8);
    err.getBuffer().setLength(0);
    return Barsheet.run(
        new PrintWriter(new StringWriter()),
        new PrintWriter(err),
        "make",
        plan.toString(),
        "--out",
        sheets.toString());
  }

  /** Types into the notes of a row, known by what stands in one of its cells. */
  private void type(String sheet, String inRow, String words) throws IOException {
    try (XSSFWorkbook open = open(book)) {
      notes(open.getSheet(sheet), inRow).setCellValue(words);
      try (OutputStream out = Files.newOutputStream(book)) {
        open.write(out);
      }
    }
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  private static String typed(Path file, String sheet, String inRow) throws IOException {
    try (XSSFWorkbook open = open(file)) {
      return notes(open.getSheet(sheet), inRow).toString();
    }
  }

  private static int rowNumber(Path file, String sheet, String inRow) throws IOException {
    try (XSSFWorkbook open = open(file)) {
      return row(open.getSheet(sheet), inRow).getRowNum();
    }
  }

  private static Cell notes(Sheet sheet, String inRow) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.toString().equals("notes")) {
          return row(sheet, inRow).getCell(cell.getColumnIndex());
        }
      }
    }
    throw new AssertionError("no notes on " + sheet.getSheetName());
  }

  private static Row row(Sheet sheet, String holding) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.toString().equals(holding)) {
          return row;
        }
      }
    }
    throw new AssertionError("no row with " + holding + " on " + sheet.getSheetName());
  }

  @Test
  void what_was_typed_stands_in_its_row_though_the_row_has_moved() throws IOException {
    type("Timeline", "A lamp", "softer light");
    int before = rowNumber(book, "Timeline", "A lamp");

    assertThat(make(FOG, GULL, LAMP)).isEqualTo(ExitStatus.DONE);

    assertThat(rowNumber(book, "Timeline", "A lamp")).isEqualTo(before + 1);
    assertThat(typed(book, "Timeline", "A lamp")).isEqualTo("softer light");
    assertThat(typed(book, "Timeline", "A gull")).isEmpty();
    Path kept = sheets.resolve("quay-kept-1.xlsx");
    assertThat(err.toString())
        .contains("what you typed is carried over; your changed workbook is kept as " + kept);
    assertThat(typed(kept, "Timeline", "A lamp")).isEqualTo("softer light");
  }

  @Test
  void a_row_that_is_gone_keeps_the_workbook_and_says_so() throws IOException {
    type("Timeline", "A lamp", "softer light");
    type("Timeline", "Fog", "more of it");

    assertThat(make(FOG, GULL)).isEqualTo(ExitStatus.DONE);

    Path kept = sheets.resolve("quay-kept-1.xlsx");
    assertThat(err.toString())
        .contains("1 cell you typed into no longer has a row; the earlier workbook is kept as")
        .contains(kept + "; the others are carried over");
    assertThat(typed(book, "Timeline", "Fog")).isEqualTo("more of it");
    assertThat(typed(kept, "Timeline", "A lamp")).isEqualTo("softer light");
  }

  @Test
  void what_was_carried_over_goes_on_through_every_later_run() throws IOException {
    type("Cues", "bar 6", "ask the composer");
    assertThat(make(FOG, GULL, LAMP)).isEqualTo(ExitStatus.DONE);
    assertThat(make(FOG, LAMP)).isEqualTo(ExitStatus.DONE);
    assertThat(typed(book, "Cues", "bar 6")).isEqualTo("ask the composer");
    assertThat(err.toString()).doesNotContain("kept as");
    assertThat(sheets.resolve("quay-kept-2.xlsx")).doesNotExist();
  }

  /** Read back, a formula's sign would turn a note into a formula: it stays text. */
  @Test
  void a_note_that_looks_like_a_formula_stays_a_note() throws IOException {
    type("Timeline", "A lamp", "=1+1");
    assertThat(make(FOG, GULL, LAMP)).isEqualTo(ExitStatus.DONE);
    try (XSSFWorkbook open = open(book)) {
      Cell cell = notes(open.getSheet("Timeline"), "A lamp");
      assertThat(cell.getStringCellValue()).isEqualTo("=1+1");
      assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
    }
  }

  /** The heading of a shot on the exposure sheet is a place to write as well. */
  @Test
  void a_note_on_the_heading_of_a_shot_is_carried_over_and_missed_when_its_shot_goes()
      throws IOException {
    type("Exposure", "Shot 2", "bring the long lens");
    assertThat(make(FOG, GULL, LAMP)).isEqualTo(ExitStatus.DONE);
    assertThat(typed(book, "Exposure", "Shot 2")).isEqualTo("bring the long lens");

    assertThat(make(FOG, GULL)).isEqualTo(ExitStatus.DONE);

    assertThat(err.toString()).contains("1 cell you typed into no longer has a row");
    Path kept = sheets.resolve("quay-kept-2.xlsx");
    assertThat(typed(kept, "Exposure", "Shot 2")).isEqualTo("bring the long lens");
  }
}

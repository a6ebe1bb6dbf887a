package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code make} over a workbook damaged by chance from a seed: it always makes the sheets, and what
 * somebody typed stands in the new workbook or the damaged one is kept.
 */
class DamagedWorkbooksTest {

  private static final String TYPED = "softer light on the quay";

  @TempDir private Path folder = Path.of("set by the test runner");

  private final StringWriter err = new StringWriter();
  private Path plan = Path.of("");
  private Path book = Path.of("");
  private Path kept = Path.of("");

  @BeforeEach
  void makeOnce() throws IOException {
    ShortScore.write(folder.resolve("quay.mid"));
    plan = folder.resolve("quay.yaml");
    Files.writeString(
        plan,
        """
        title: The quay
        score: quay.mid
        film: {frame-rate: 24}
        panels:
          - {panel: 1, action: Fog}
          - {panel: 2, action: A lamp, cue: bar 6}
        """,
        UTF_8);
    book = folder.resolve("quay-sheets/quay.xlsx");
    kept = folder.resolve("quay-sheets/quay-kept-1.xlsx");
    assertThat(make()).isEqualTo(ExitStatus.DONE);
  }

  private int make() {
    err.getBuffer().setLength(0);
    return Barsheet.run(
        new PrintWriter(new StringWriter()), new PrintWriter(err), "make", plan.toString());
  }

  /** The workbook as a spreadsheet program saves it after a note was typed into it. */
  private byte[] typedInto() throws IOException {
    try (XSSFWorkbook open = opened(Files.readAllBytes(book));
        ByteArrayOutputStream saved = new ByteArrayOutputStream()) {
      notes(open.getSheet("Timeline")).setCellValue(TYPED);
      open.write(saved);
      return saved.toByteArray();
    }
  }

  private static Cell notes(Sheet timeline) {
    int column = cell(timeline, "notes").getColumnIndex();
    return cell(timeline, "A lamp").getRow().getCell(column);
  }

  private static Cell cell(Sheet sheet, String holding) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.toString().equals(holding)) {
          return cell;
        }
      }
    }
    throw new AssertionError("nothing on " + sheet.getSheetName() + " holds " + holding);
  }

  private static XSSFWorkbook opened(byte[] book) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(book));
  }

  private boolean carriedOver() throws IOException {
    try (XSSFWorkbook open = opened(Files.readAllBytes(book))) {
      return notes(open.getSheet("Timeline")).toString().equals(TYPED);
    }
  }

  /** Two workbooks, one saved by another program, one made by us with the note carried over. */
  private void damageEach(long seed, int trials) throws IOException {
    byte[] saved = typedInto();
    Files.write(book, saved);
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    assertThat(carriedOver()).isTrue();
    byte[] made = Files.readAllBytes(book);
    Random random = new Random(seed);
    DamagedBook damage = new DamagedBook(random);
    for (int trial = 0; trial < trials; trial++) {
      Files.deleteIfExists(kept);
      byte[] damaged = damage.of(random.nextBoolean() ? saved : made);
      Files.write(book, damaged);
      assertThat(make()).as("trial %d of seed %d: %s", trial, seed, err).isEqualTo(ExitStatus.DONE);
      if (Files.exists(kept)) {
        assertThat(kept).hasBinaryContent(damaged);
        assertThat(err.toString()).contains("kept as " + kept);
      } else {
        assertThat(carriedOver()).as("trial %d of seed %d", trial, seed).isTrue();
      }
    }
  }

  @Test
  void what_was_typed_into_a_damaged_workbook_is_carried_over_or_kept() throws IOException {
    damageEach(7, 30);
  }

  @Tag("trial")
  @Test
  void what_was_typed_into_a_thousand_damaged_workbooks_is_carried_over_or_kept()
      throws IOException {
    damageEach(8, 1000);
  }

  @Test
  void a_damaged_workbook_is_told_with_what_to_do() throws IOException {
    byte[] saved = typedInto();
    Files.write(book, Arrays.copyOf(saved, saved.length / 2));
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString())
        .contains("the earlier workbook is damaged, so what you typed could not be carried over")
        .contains("it is kept as " + kept);
  }
}

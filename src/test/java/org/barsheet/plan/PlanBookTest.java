package org.barsheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.begin.BookWriter;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan kept as a workbook means what the same plan means as YAML, whatever people do to it. */
class PlanBookTest {

  @TempDir private Path folder;
  private Path yaml = Path.of("");
  private Path book = Path.of("");

  @BeforeEach
  void writeTheWholeSchemaAsBook() throws IOException {
    yaml = folder.resolve("plan.yaml");
    book = folder.resolve("plan.xlsx");
    try (InputStream in = PlanBookTest.class.getResourceAsStream("whole-schema.yaml")) {
      Files.write(yaml, Objects.requireNonNull(in).readAllBytes());
    }
    Entry.Keyed tree = PlanSource.read(new PlanReading(yaml));
    Files.write(book, new BookWriter(tree, List.of("Celesta", "Flute")).bytes());
  }

  private void change(Consumer<XSSFWorkbook> change) throws IOException {
    XSSFWorkbook changed;
    try (InputStream in = Files.newInputStream(book)) {
      changed = new XSSFWorkbook(in);
    }
    try (changed) {
      change.accept(changed);
      try (OutputStream out = Files.newOutputStream(book)) {
        changed.write(out);
      }
    }
  }

  private static void assertSame(Plan one, Plan other) {
    assertThat(one)
        .usingRecursiveComparison()
        .ignoringFields("text")
        .ignoringFieldsOfTypes(Where.class)
        .isEqualTo(other);
  }

  private void assertMeansTheSame() {
    assertSame(PlanReader.read(book), PlanReader.read(yaml));
  }

  /** A folder on the sheet Film and a table on the sheet Clips cannot both hold. */
  @Test
  void recordings_in_a_folder_and_in_a_table_are_told_apart() throws IOException {
    change(
        it -> {
          Sheet film = it.getSheet("Film");
          Row clips = film.getRow(film.getLastRowNum());
          assertThat(clips.getCell(0).getStringCellValue()).isEqualTo("clips");
          clips.getCell(1).setCellValue("recordings");
        });
    assertThat(problems())
        .extracting(Problem::toString)
        .containsExactly(
            book
                + ", sheet Clips, cell A2: 'clips' is already given as text on another sheet\n"
                + "  empty that cell, or leave this table empty");
  }

  private List<Problem> problems() {
    InputException wrong = catchThrowableOfType(InputException.class, () -> PlanReader.read(book));
    assertThat(wrong).isNotNull();
    return wrong.problems();
  }

  private static Cell cell(XSSFWorkbook book, String sheet, int row, int column) {
    Sheet one = book.getSheet(sheet);
    Row cells = one.getRow(row) == null ? one.createRow(row) : one.getRow(row);
    return cells.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  private static int column(XSSFWorkbook book, String sheet, String heading) {
    for (Cell cell : book.getSheet(sheet).getRow(0)) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no column " + heading);
  }

  private static int setting(XSSFWorkbook book, String sheet, String name) {
    for (Row row : book.getSheet(sheet)) {
      if (row.getCell(0) != null && row.getCell(0).getStringCellValue().equals(name)) {
        return row.getRowNum();
      }
    }
    throw new AssertionError("no setting " + name);
  }

  private static CellStyle format(XSSFWorkbook book, String format) {
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(format));
    return style;
  }

  @Test
  void the_whole_schema_means_the_same_as_a_workbook() {
    assertMeansTheSame();
    assertThat(PlanReader.read(book).text().notes()).isEmpty();
  }

  @Test
  void a_workbook_has_headings_with_notes_lists_to_choose_from_and_text_that_stays_text()
      throws IOException {
    change(
        changed -> {
          Sheet panels = changed.getSheet("Panels");
          int cue = column(changed, "Panels", "cue");
          assertThat(cell(changed, "Panels", 0, cue).getCellComment().getString().getString())
              .contains("For example: glimmer 3");
          assertThat(panels.getDataValidations().size()).isGreaterThan(8);
          assertThat(panels.getColumnStyle(0).getDataFormat())
              .isEqualTo((short) BuiltinFormats.getBuiltinFormat("@"));
          assertThat(panels.getPaneInformation().isFreezePane()).isTrue();
        });
  }

  @Test
  void blank_rows_extra_columns_and_sheets_of_ones_own_do_no_harm() throws IOException {
    change(
        changed -> {
          Sheet panels = changed.getSheet("Panels");
          panels.shiftRows(0, panels.getLastRowNum(), 2);
          cell(changed, "Panels", 0, 0).setCellValue("Storyboard of March");
          int last = panels.getRow(2).getLastCellNum();
          panels.getRow(2).createCell(last).setCellValue("mood");
          panels.getRow(3).createCell(last).setCellValue("calm");
          cell(changed, "Openings", 20, 3).setCellValue("  ");
          changed.createSheet("Shopping list").createRow(0).createCell(0).setCellValue("putty");
        });
    assertMeansTheSame();
    assertThat(PlanReader.read(book).text().notes())
        .extracting(PlanNote::sentence)
        .containsExactly("the column 'mood' is ignored", "the sheet 'Shopping list' is ignored");
  }

  @Test
  void columns_may_stand_in_any_order() throws IOException {
    change(
        changed -> {
          for (Row row : changed.getSheet("Openings")) {
            Cell left = row.getCell(1, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
            Cell name = row.getCell(0);
            String text = name.getStringCellValue();
            if (row.getRowNum() == 0) {
              name.setCellValue("Left");
            } else {
              name.setCellValue(left.getNumericCellValue());
            }
            left.setCellValue(row.getRowNum() == 0 ? "Opening" : text);
          }
        });
    assertMeansTheSame();
  }

  @Test
  void numbers_typed_as_text_and_text_typed_as_numbers_mean_the_same() throws IOException {
    change(
        changed -> {
          int left = column(changed, "Openings", "left");
          cell(changed, "Openings", 1, left).setCellValue("3");
          Cell rate = cell(changed, "Film", setting(changed, "Film", "frame-rate"), 1);
          assertThat(rate.getStringCellValue()).isEqualTo("29.97df");
          cell(changed, "Panels", 1, 0).setCellValue(1);
          Cell share = cell(changed, "Openings", 4, column(changed, "Openings", "brightens"));
          share.setCellStyle(format(changed, "0%"));
          share.setCellValue(0.8);
          Cell lens = cell(changed, "Camera", setting(changed, "Camera", "lens"), 1);
          lens.setCellStyle(format(changed, "0\" mm\""));
          lens.setCellValue(50);
        });
    assertMeansTheSame();
  }

  @Test
  void times_typed_as_times_are_seconds_timecodes_or_days() throws IOException {
    change(
        changed -> {
          CellStyle time = format(changed, "h:mm:ss");
          Cell starts = cell(changed, "Film", setting(changed, "Film", "music-starts"), 1);
          starts.setCellStyle(time);
          starts.setCellValue(2.0 / 86_400);
          Cell first = cell(changed, "Film", setting(changed, "Film", "first-frame"), 1);
          first.setCellStyle(time);
          first.setCellValue(1.0 / 24);
          Cell day = cell(changed, "Shoot", setting(changed, "Shoot", "starts"), 1);
          day.setCellStyle(format(changed, "d/m/yyyy"));
          day.setCellValue(java.time.LocalDate.of(2026, 3, 2));
        });
    assertMeansTheSame();
    assertThat(PlanReader.read(book).film().musicStarts()).isEqualTo(Seconds.of(2));
  }

  @Test
  void what_a_program_turned_into_a_date_is_told_with_its_cell() throws IOException {
    change(
        changed -> {
          Cell meter = cell(changed, "Music", setting(changed, "Music", "meter"), 1);
          meter.setCellStyle(format(changed, "d-mmm"));
          meter.setCellValue(java.time.LocalDate.of(2026, 6, 8));
          Cell cue = cell(changed, "Panels", 4, column(changed, "Panels", "cue"));
          cue.setCellStyle(format(changed, "d-mmm"));
          cue.setCellValue(java.time.LocalDate.of(2026, 3, 12));
        });
    assertThat(problems())
        .extracting(problem -> problem.position() + ": " + problem.sentence())
        .containsExactly(
            "sheet Music, cell B6: the spreadsheet program turned this cell into a date: 2026-06-08",
            "sheet Panels, cell C5: the spreadsheet program turned this cell into a date:"
                + " 2026-03-12");
  }

  @Test
  void a_cell_merged_down_counts_for_every_panel_it_covers() throws IOException {
    change(
        changed -> {
          int action = column(changed, "Panels", "action");
          cell(changed, "Panels", 4, action).setCellValue("All at once");
          int last = changed.getSheet("Panels").getLastRowNum();
          changed.getSheet("Panels").addMergedRegion(new CellRangeAddress(4, last, action, action));
        });
    List<Panel> panels = PlanReader.read(book).panels();
    assertThat(panels.get(2).action()).isEqualTo("All at once");
    assertThat(panels.get(3).action()).isEqualTo("All at once");
  }

  @Test
  void a_panel_number_merged_over_its_reveals_is_one_panel() throws IOException {
    change(changed -> changed.getSheet("Panels").addMergedRegion(new CellRangeAddress(2, 3, 0, 0)));
    assertMeansTheSame();
  }

  @Test
  void every_mistake_is_told_with_its_sheet_and_cell() throws IOException {
    change(
        changed -> {
          cell(changed, "Film", setting(changed, "Film", "tail"), 1).setCellValue("2");
          cell(changed, "Film", setting(changed, "Film", "frame-size"), 0).setCellValue("sise");
          cell(changed, "Panels", 0, column(changed, "Panels", "length")).setCellValue("lenght");
          cell(changed, "Panels", 2, column(changed, "Panels", "cue")).setCellValue("glimmer #3");
          Cell opening = cell(changed, "Panels", 2, column(changed, "Panels", "opening"));
          opening.setCellValue("lamp-2");
          cell(changed, "Openings", 2, 0).setCellValue("lamp-1");
          cell(changed, "Panels", 9, 1).setCellValue("Whose is this?");
          cell(changed, "Panels", 2, column(changed, "Panels", "locked")).setCellFormula("1/0");
          cell(changed, "Panels", 2, column(changed, "Panels", "locked"))
              .setCellErrorValue(org.apache.poi.ss.usermodel.FormulaError.DIV0.getCode());
          changed.setSheetName(changed.getSheetIndex("Performers"), "Performer");
        });
    assertThat(problems().stream().map(one -> one.position() + ": " + one.sentence()))
        .containsExactlyInAnyOrder(
            "sheet Film, cell B11: tail: this length has no unit",
            "sheet Film, cell A12: film has no setting called 'sise'",
            "sheet Panels, cell E1: no column is called 'lenght'",
            "sheet Panels, cell C3: cue: '#3' isn't understood here",
            "sheet Panels, cell I3: no opening is called lamp-2",
            "sheet Openings, cell A3: 'lamp-1' is given twice",
            "sheet Panels, row 10: this row has no 'panel'",
            "sheet Panels, cell H3: the cell shows #DIV/0!",
            "sheet Performer: no sheet of a plan is called 'Performer'",
            "sheet Panels, cell S3: no performer is called cello",
            "sheet Clips, cell A2: no performer is called cello",
            "sheet Panels, cell S4: no performer is called no",
            "sheet Panels, cell T4: no opening is called door");
  }

  @Test
  void the_value_a_formula_has_is_read_and_text_that_looks_like_one_is_text() throws IOException {
    change(
        changed -> {
          Cell left = cell(changed, "Openings", 1, column(changed, "Openings", "left"));
          left.setCellFormula("1+2");
          left.setCellValue(3);
          cell(changed, "Panels", 1, column(changed, "Panels", "action")).setCellValue("=1+1");
        });
    Plan plan = PlanReader.read(book);
    assertThat(plan.workshop().openings().get(0).rect().left()).isEqualTo(3);
    assertThat(plan.panels().get(0).action()).isEqualTo("=1+1");
  }

  @Test
  void the_same_plan_gives_the_same_bytes_whatever_the_time() throws IOException {
    Entry.Keyed tree = PlanSource.read(new PlanReading(yaml));
    assertThat(new BookWriter(tree, List.of()).bytes())
        .isEqualTo(new BookWriter(tree, List.of()).bytes());
    assertThat(Arrays.copyOfRange(Files.readAllBytes(book), 10, 14))
        .as("time and date of the first entry (ZIP APPNOTE 6.3.10, 4.3.7)")
        .containsOnly(0);
  }
}

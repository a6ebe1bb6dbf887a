package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.SheetNote;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.plan.Film;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureColumns;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookWriterTest {

  private static final FilmSheet FILM = SampleFilm.harbour().make();
  private static final byte[] BYTES = WorkbookWriter.bytes(FILM);
  private static final WrittenBook BOOK = WrittenBook.of(BYTES);

  @TempDir private Path folder;

  @Test
  void the_sheets_stand_in_the_order_people_ask_for_them() {
    assertThat(BOOK.sheetNames())
        .containsExactly(
            "Film",
            "Timeline",
            "Music",
            "Exposure",
            "Cues",
            "Openings",
            "Artwork",
            "Shooting",
            "Days",
            "Performers",
            "Call cello",
            "Bars");
  }

  @Test
  void the_same_film_gives_the_same_bytes() {
    assertThat(WorkbookWriter.bytes(SampleFilm.harbour().make())).isEqualTo(BYTES);
  }

  @Test
  void every_sheet_repeats_and_freezes_its_heading_and_numbers_its_pages() {
    for (Sheet sheet : BOOK.book()) {
      assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:5");
      assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
      assertThat(sheet.getFooter().getRight()).contains("page &P of &N");
      assertThat(sheet.getFooter().getLeft().length()).isLessThan(255);
      assertThat(sheet.getProtect()).isFalse();
    }
  }

  @Test
  void the_paper_is_the_one_the_plan_asks_for() throws IOException {
    FilmSheet letter = SampleFilm.harbour().paper(Film.Paper.LETTER).make();
    try (WrittenBook letterBook = WrittenBook.of(letter)) {
      // ECMA-376 part 1, 18.3.1.63: paper 9 is A4, paper 1 is Letter.
      assertThat(BOOK.sheet("Film").getPrintSetup().getPaperSize()).isEqualTo((short) 9);
      assertThat(letterBook.sheet("Film").getPrintSetup().getPaperSize()).isEqualTo((short) 1);
    }
  }

  @Test
  void links_lead_to_cells_that_exist() {
    int links = 0;
    for (Sheet sheet : BOOK.book()) {
      for (XSSFHyperlink link : ((XSSFSheet) sheet).getHyperlinkList()) {
        AreaReference area = new AreaReference(link.getLocation(), SpreadsheetVersion.EXCEL2007);
        Sheet target = BOOK.sheet(area.getFirstCell().getSheetName());
        assertThat(target.getRow(area.getFirstCell().getRow())).isNotNull();
        links++;
      }
    }
    assertThat(links).isGreaterThan(20);
  }

  @Test
  void a_panel_of_the_timeline_leads_to_its_first_frame() {
    for (Shot shot : FILM.timing().shots()) {
      Row row = BOOK.panel(shot);
      String location = ((XSSFHyperlink) row.getCell(0).getHyperlink()).getLocation();
      AreaReference area = new AreaReference(location, SpreadsheetVersion.EXCEL2007);
      Row target = BOOK.sheet("Exposure").getRow(area.getFirstCell().getRow());
      assertThat((long) WrittenBook.number(target, ExposureColumns.FILM_FRAME))
          .isEqualTo(shot.frames().start());
    }
  }

  @Test
  void joined_cells_never_overlap() {
    for (Sheet sheet : BOOK.book()) {
      List<CellRangeAddress> joined = sheet.getMergedRegions();
      for (int one = 0; one < joined.size(); one++) {
        for (int other = one + 1; other < joined.size(); other++) {
          assertThat(joined.get(one).intersects(joined.get(other)))
              .as("%s %s %s", sheet.getSheetName(), joined.get(one), joined.get(other))
              .isFalse();
        }
      }
    }
  }

  @Test
  void row_names_are_hidden_and_never_printed() {
    for (String name :
        List.of("Timeline", "Exposure", "Cues", "Openings", "Artwork", "Shooting", "Bars")) {
      int column = BOOK.column(name, "row name");
      assertThat(BOOK.sheet(name).isColumnHidden(column)).isTrue();
      String printed = BOOK.book().getPrintArea(BOOK.book().getSheetIndex(name));
      AreaReference area = new AreaReference(printed, SpreadsheetVersion.EXCEL2007);
      assertThat((int) area.getLastCell().getCol()).isLessThan(column);
    }
  }

  @Test
  void named_ranges_cover_their_tables() {
    List<String> names = new ArrayList<>();
    for (XSSFName name : BOOK.book().getAllNames()) {
      names.add(name.getNameName());
    }
    assertThat(names)
        .contains(
            "Findings",
            "Timeline_panels",
            "Exposure_frames",
            "Exposure_done",
            "Exposure_notes",
            "Exposure_row_names",
            "Cues_table",
            "Openings_table",
            "Artwork_openings",
            "Shooting_table",
            "Shooting_done",
            "Shooting_notes",
            "Bars_table");
  }

  @Test
  void nothing_that_is_a_number_stands_as_text() {
    for (Sheet sheet : BOOK.book()) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.STRING) {
            assertThat(cell.getStringCellValue())
                .as("%s!%s", sheet.getSheetName(), cell.getAddress())
                .doesNotMatch("[0-9]+([.,][0-9]+)?");
          }
        }
      }
    }
  }

  @Test
  void styles_stay_few_however_long_the_film_is() throws IOException {
    FilmSheet longer =
        SampleFilm.harbour().shot("8", "Night", 3000).reveal("lamp-1", 1, 2000, 300, 3).make();
    try (WrittenBook other = WrittenBook.of(longer)) {
      assertThat(other.book().getNumCellStyles())
          .isEqualTo(BOOK.book().getNumCellStyles())
          .isLessThan(250);
    }
  }

  @Test
  void errors_and_warnings_stand_first_remarks_in_a_section_below() {
    XSSFSheet sheet = BOOK.sheet("Film");
    int urgent = SheetFrame.FIRST_ROW;
    int remarks =
        new AreaReference(name("Remarks"), SpreadsheetVersion.EXCEL2007).getFirstCell().getRow();
    assertThat(WrittenBook.text(sheet.getRow(remarks - 1), 0)).isEqualTo("Remarks");
    for (Finding finding : FILM.findings()) {
      boolean waits = finding.severity() == Finding.Severity.REMARK;
      Row row = sheet.getRow(waits ? remarks++ : urgent++);
      assertThat(WrittenBook.text(row, 0)).isEqualTo(Signs.of(finding.severity()));
      assertThat(WrittenBook.text(row, 2)).isEqualToIgnoringCase(finding.concerns().name());
      assertThat(WrittenBook.text(row, 5)).isEqualTo(finding.sentence());
    }
  }

  private static String name(String range) {
    return BOOK.book().getName(range).getRefersToFormula();
  }

  /** Programs that fit a sheet on pages overlook the breaks set by hand. */
  @Test
  void only_sheets_without_breaks_of_their_own_are_fitted_on_fewer_pages() throws IOException {
    try (WrittenBook demo = WrittenBook.of(DemoFilm.sheet())) {
      for (Sheet sheet : demo.book()) {
        if (sheet.getRowBreaks().length > 0) {
          assertThat(sheet.getPrintSetup().getFitHeight()).as(sheet.getSheetName()).isZero();
        }
      }
      assertThat(demo.sheet("Exposure").getRowBreaks()).isNotEmpty();
      assertThat(demo.sheet("Call horn").getPrintSetup().getFitHeight()).isEqualTo((short) 1);
    }
  }

  @Test
  void defaults_are_told_apart_from_what_the_plan_says() {
    List<String> settings = new ArrayList<>();
    for (Row row : BOOK.sheet("Film")) {
      settings.add(WrittenBook.text(row, 1) + " " + WrittenBook.text(row, 6));
    }
    assertThat(settings).contains("film.frame-rate from the plan", "film.tail default");
  }

  @Test
  void hostile_texts_stay_text_and_lose_only_what_a_cell_cannot_hold() throws IOException {
    String hostile = "=HYPERLINK(\"x\")\u0000\u000b\u202e_x0041_ &<b> \ud800 ok";
    FilmSheet nasty =
        SampleFilm.at(FrameRate.FPS_24)
            .title("@title & \u0007bell")
            .shot("=1+1", hostile, 100)
            .shot("+2", "-3", 100)
            .reveal("lamp-1", 1, 80, 10, 2)
            .note(0, SheetNote.Column.SOUND, "@sum " + "x".repeat(40_000))
            .finding(
                Finding.Severity.REMARK,
                Finding.Concerns.EDITOR,
                "+2",
                "",
                OptionalLong.empty(),
                "=cmd",
                "\tstart")
            .make();
    try (WrittenBook written = WrittenBook.of(nasty)) {
      Row first = written.panel(nasty.timing().shots().get(0));
      assertThat(first.getCell(0).getStringCellValue()).isEqualTo("=1+1");
      assertThat(first.getCell(0).getCellStyle().getQuotePrefixed()).isTrue();
      assertThat(WrittenBook.text(first, 2)).isEqualTo("=HYPERLINK(\"x\")_x0041_ &<b>  ok");
      for (Sheet sheet : written.book()) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            assertThat(cell.getCellType()).isNotIn(CellType.FORMULA, CellType.ERROR);
          }
        }
      }
    }
  }

  @Test
  void a_workbook_knows_whether_somebody_saved_it_since() throws IOException {
    Path target = folder.resolve("quay.xlsx");
    Files.write(target, BYTES);
    assertThat(WorkbookWriter.isUntouched(target)).isTrue();
    typeInto(target);
    assertThat(WorkbookWriter.isUntouched(target)).isFalse();
    Files.writeString(target, "no workbook at all");
    assertThat(WorkbookWriter.isUntouched(target)).isFalse();
  }

  private static void typeInto(Path workbook) throws IOException {
    try (WrittenBook opened = WrittenBook.of(Files.readAllBytes(workbook));
        OutputStream out = Files.newOutputStream(workbook)) {
      int column = opened.column("Exposure", "notes");
      opened.sheet("Exposure").getRow(10).getCell(column).setCellValue("the putty slipped");
      opened.book().write(out);
    }
  }

  @Test
  void a_film_without_reveals_motifs_or_drawings_still_prints() throws IOException {
    FilmSheet bare = SampleFilm.at(FrameRate.FPS_25).openings(List.of()).shot("1", "", 50).make();
    try (WrittenBook written = WrittenBook.of(bare)) {
      assertThat(written.frameRows()).hasSize(50);
    }
  }
}

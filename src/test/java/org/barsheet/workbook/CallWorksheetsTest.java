package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.barsheet.calls.Call;
import org.barsheet.calls.CallAppearance;
import org.barsheet.film.FilmSheet;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.typed.CarriedOver;
import org.barsheet.workbook.typed.TypedCells;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CallWorksheetsTest {

  private static final String BY = "send it by";

  private static FilmSheet with(List<String> performers) {
    return SampleFilm.harbour().performers(performers).make();
  }

  private static List<String> company(int size) {
    return IntStream.rangeClosed(1, size).mapToObj(number -> "player " + number).toList();
  }

  private static List<String> texts(XSSFSheet sheet) {
    List<String> texts = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        texts.add(cell.toString());
      }
    }
    return texts;
  }

  @Test
  void a_performer_reads_on_their_sheet_all_that_their_call_says() throws IOException {
    FilmSheet film = with(List.of("cello"));
    Call call = film.calls().get(0);
    try (WrittenBook book = WrittenBook.of(film)) {
      List<String> texts = texts(book.sheet("Call cello"));
      assertThat(texts).containsAll(CallAppearance.HEADINGS).contains(BY);
      assertThat(call.seen()).isNotEmpty();
      for (CallAppearance seen : call.seen()) {
        assertThat(texts).containsSubsequence(seen.cells());
      }
      for (Call.Section section : call.instructions()) {
        assertThat(texts).contains(section.heading()).containsAll(section.lines());
      }
      for (Call.Section section : Call.CAUTIONS) {
        assertThat(texts).contains(section.heading()).containsAll(section.lines());
      }
    }
  }

  @Test
  void the_times_are_those_of_the_sound_file() {
    // Its head is 8 s: frame f of the film at 24 a second is f/24 + 8 s of the file.
    FilmSheet film = with(List.of("cello"));
    CallAppearance first = film.calls().get(0).seen().get(0);
    long frame = film.appearances().get(0).frames().start();
    double seconds = frame / 24.0 + 8;
    String[] parts = first.from().split(":", -1);
    assertThat(60 * Integer.parseInt(parts[0]) + Double.parseDouble(parts[1]))
        .isBetween(seconds - 0.0501, seconds + 0.0501);
  }

  @Test
  void somebody_not_seen_yet_is_told_so_and_still_stands_among_the_players() throws IOException {
    try (WrittenBook book = WrittenBook.of(with(List.of("cello", "horn")))) {
      assertThat(texts(book.sheet("Call horn"))).contains(Call.NOT_SEEN, "Take care");
      assertThat(texts(book.sheet("Performers"))).contains("horn", "not seen yet");
    }
  }

  @Test
  void every_name_among_the_players_leads_to_that_player_s_call() throws IOException {
    for (int size : new int[] {3, CallWorksheets.MOST_SHEETS + 1}) {
      FilmSheet film = with(company(size));
      try (WrittenBook book = WrittenBook.of(film)) {
        XSSFSheet players = book.sheet("Performers");
        int links = 0;
        for (XSSFHyperlink link : players.getHyperlinkList()) {
          String name = link(players, link.getCellRef()).toString();
          AreaReference area = new AreaReference(link.getLocation(), SpreadsheetVersion.EXCEL2007);
          XSSFSheet target = book.sheet(area.getFirstCell().getSheetName());
          boolean together = size > CallWorksheets.MOST_SHEETS;
          assertThat(target.getSheetName()).isEqualTo(together ? "Calls" : "Call " + name);
          if (together) {
            assertThat(target.getRow(area.getFirstCell().getRow()).getCell(0).toString())
                .startsWith(name + " · ");
          }
          links++;
        }
        assertThat(links).isGreaterThanOrEqualTo(size);
      }
    }
  }

  private static Cell link(XSSFSheet sheet, String reference) {
    CellReference at = new CellReference(reference);
    return sheet.getRow(at.getRow()).getCell(at.getCol());
  }

  @Test
  void a_larger_company_stands_on_one_sheet_each_on_pages_of_their_own() throws IOException {
    int size = CallWorksheets.MOST_SHEETS + 1;
    FilmSheet film = with(company(size));
    try (WrittenBook book = WrittenBook.of(film)) {
      assertThat(book.sheetNames()).contains("Calls").noneMatch(name -> name.startsWith("Call "));
      XSSFSheet sheet = book.sheet("Calls");
      assertThat(sheet.getRowBreaks()).hasSize(size - 1);
      for (int above : sheet.getRowBreaks()) {
        assertThat(sheet.getRow(above + 1).getCell(0).toString()).startsWith("player ");
      }
    }
    try (WrittenBook book = WrittenBook.of(with(company(CallWorksheets.MOST_SHEETS)))) {
      assertThat(book.sheetNames().stream().filter(name -> name.startsWith("Call ")).toList())
          .hasSize(CallWorksheets.MOST_SHEETS);
    }
  }

  @Test
  void a_name_that_looks_like_a_formula_stays_text() throws IOException {
    String name = "=HYPERLINK(\"http://x\",\"y\")";
    try (WrittenBook book = WrittenBook.of(with(List.of(name)))) {
      XSSFSheet players = book.sheet("Performers");
      Cell cell =
          players.getRow(SheetFrame.FIRST_ROW).getCell(book.column("Performers", "performer"));
      assertThat(cell.getStringCellValue()).isEqualTo(name);
      assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
      for (String sheet : book.sheetNames()) {
        for (Row row : book.sheet(sheet)) {
          row.forEach(one -> assertThat(one.getCellType().name()).isNotEqualTo("FORMULA"));
        }
      }
    }
  }

  @Test
  void nobody_called_like_another_sheet_takes_its_place() throws IOException {
    List<String> names = List.of("Film", "film", "Performers", "Exposure", "History");
    try (WrittenBook book = WrittenBook.of(with(names))) {
      assertThat(book.sheetNames())
          .contains("Film", "Performers", "Exposure", "Call Film", "Call film (2)", "Call History")
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void a_date_typed_on_one_s_own_sheet_is_found_again_when_the_company_has_grown(
      @TempDir Path folder) throws IOException {
    Path saved = folder.resolve("quay.xlsx");
    try (WrittenBook book = WrittenBook.of(with(company(2)));
        OutputStream out = Files.newOutputStream(saved)) {
      XSSFSheet sheet = book.sheet("Call player 1");
      sheet
          .getRow(SheetFrame.FIRST_ROW)
          .getCell(book.column("Call player 1", BY))
          .setCellValue("Friday");
      book.book().write(out);
    }
    FilmSheet grown = with(company(CallWorksheets.MOST_SHEETS + 1));
    FinishedWorkbook again = WorkbookWriter.make(grown, TypedCells.read(saved));
    assertThat(again.carried()).isEqualTo(new CarriedOver(1, 0, true));
    try (WrittenBook book = WrittenBook.of(again.bytes())) {
      assertThat(texts(book.sheet("Calls"))).contains("Friday");
    }
  }
}

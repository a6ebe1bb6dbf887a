package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.ticks.TakenPhotograph;
import org.barsheet.timing.Finding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ticks of workbook and phone, from one run to the next. */
class TicksTest {

  private Path plan = Path.of("");
  private Path sheets = Path.of("");

  @BeforeEach
  void make_a_film(@TempDir Path folder) throws IOException {
    plan = folder.resolve("quay.yaml");
    sheets = folder.resolve("quay-sheets");
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), folder.resolve("quay.mid"));
    write(10);
    make();
  }

  private void write(int photographs) throws IOException {
    Files.writeString(
        plan,
        """
        title: Quay
        score: quay.mid
        film: {frame-rate: 24}
        shoot: {photographs-per-hour: 20, minutes-per-setup: 30}
        artwork: {models: {lamp: {enlarged: 3}}}
        openings:
          lamp-1: {left: 2, top: 2, width: 2, height: 2, model: lamp, hinge: left, to: 90 deg}
        panels:
          - {panel: 1, action: Fog}
          - panel: 2
            action: A lamp
            cue: bar 9
            reveals: [{opening: lamp-1, photographs: %d, slow: none}]
        """
            .formatted(photographs));
  }

  private FilmSheet make() {
    return Production.make(plan, sheets, Extras.NONE, Progress.SILENT).film();
  }

  private void type(String rowName, String words) throws IOException {
    Path book = sheets.resolve("quay.xlsx");
    try (XSSFWorkbook open = open(book)) {
      Cell cell = cell(open, rowName);
      cell.setBlank(); // the library keeps a text that stands in the cell itself
      cell.setCellValue(words);
      try (OutputStream out = Files.newOutputStream(book)) {
        open.write(out);
      }
    }
  }

  private String done(String rowName) throws IOException {
    try (XSSFWorkbook open = open(sheets.resolve("quay.xlsx"))) {
      return cell(open, rowName).toString();
    }
  }

  private static XSSFWorkbook open(Path book) throws IOException {
    try (InputStream in = Files.newInputStream(book)) {
      return new XSSFWorkbook(in);
    }
  }

  private static Cell cell(XSSFWorkbook book, String rowName) {
    int done = -1;
    for (Row row : book.getSheet("Shooting")) {
      for (Cell cell : row) {
        done = cell.toString().equals("done") ? cell.getColumnIndex() : done;
        if (cell.toString().equals(rowName)) {
          return row.getCell(done);
        }
      }
    }
    throw new AssertionError("no row " + rowName);
  }

  private static Optional<Finding> finding(FilmSheet film, String begins) {
    return film.findings().stream()
        .filter(finding -> finding.sentence().startsWith(begins))
        .findFirst();
  }

  private void phone(String taken) throws IOException {
    Files.writeString(
        plan.resolveSibling("quay-taken.json"),
        "{\"format\":\"barsheet-taken\",\"version\":1,\"taken\":[" + taken + "]}");
  }

  @Test
  void what_is_ticked_counts_and_stays_and_a_change_of_the_plan_gives_it_its_new_names()
      throws IOException {
    type("movement lamp", "1-8, again 4-5");
    FilmSheet film = make();
    assertThat(film.ticks().done()).isEqualTo(6);
    assertThat(film.ticks().again()).isEqualTo(2);
    assertThat(finding(film, "take again: lamp 004 to 005").orElseThrow().remedy())
        .contains("put in a fresh flap: lamp-1")
        .contains("set it as in lamp 003");
    assertThat(done("movement lamp")).isEqualTo("1-8, again 4-5");
    assertThat(Files.readString(sheets.resolve("timing.json")))
        .contains("\"done\": 6,")
        .contains("\"mark\":\"again\"");

    write(20);
    FilmSheet longer = make();
    assertThat(finding(longer, "8 ticked photographs have new names")).isPresent();
    assertThat(longer.ticks().photographs().stream().filter(TakenPhotograph::isTaken))
        .extracting(TakenPhotograph::name)
        .containsExactly("lamp 002", "lamp 004", "lamp 006", "lamp 012", "lamp 014", "lamp 016");
    assertThat(done("movement lamp")).isEqualTo("2, 4, 6, 12, 14, 16, again 8, again 10");
    assertThat(make().ticks().done()).isEqualTo(6);
  }

  @Test
  void a_reveal_that_is_ticked_whole_counts_as_photographed_until_a_tick_is_struck()
      throws IOException {
    type("movement lamp", "√");
    type("plate lamp 000", "x");
    FilmSheet film = make();
    assertThat(film.plan().panels().get(1).reveals().get(0).photographed()).isTrue();
    String asked = Files.readString(plan);
    Files.writeString(plan, asked.replace("cue: bar 9", "cue: bar 10"));
    assertThatThrownBy(this::make)
        .isInstanceOf(InputException.class)
        .hasMessageContaining("take its photographs again (strike their ticks)");
    Files.writeString(plan, asked);
    type("movement lamp", "1-9, again 10");
    assertThat(make().plan().panels().get(1).reveals().get(0).photographed()).isFalse();
  }

  @Test
  void the_phone_adds_to_the_workbook_and_where_they_disagree_it_is_asked() throws IOException {
    type("movement lamp", "1-3");
    phone(
        """
        {"photograph":"lamp 000","mark":"taken","note":"a hair"},
        {"photograph":"lamp 003","mark":"again","at":"2026-03-02T10:00:00"}
        """);
    FilmSheet film = Production.film(plan, Progress.SILENT);
    assertThat(film.ticks().done()).isEqualTo(3);
    assertThat(film.ticks().photographs().stream().flatMap(one -> one.notes().stream()))
        .contains("a hair");
    assertThat(finding(film, "workbook and phone disagree on lamp 003")).isPresent();
  }

  @Test
  void what_cannot_be_made_out_is_told_and_stays() throws IOException {
    type("movement lamp", "nearly");
    phone("oops");
    FilmSheet film = make();
    assertThat(finding(film, "Shooting, movement lamp: 'nearly' under done")).isPresent();
    assertThat(finding(film, "quay-taken.json is ignored: it is damaged")).isPresent();
    assertThat(film.ticks().done()).isZero();
    assertThat(done("movement lamp")).isEqualTo("nearly");
    assertThat(film.ticks().unread()).hasSize(2);
  }
}

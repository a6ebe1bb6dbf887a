package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.SheetNote;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureColumns;
import org.barsheet.workbook.exposure.ExposureLayout;
import org.barsheet.workbook.exposure.ExposureRow;
import org.barsheet.workbook.exposure.ExposureSheets;
import org.barsheet.workbook.exposure.FrameNotes;
import org.barsheet.workbook.pen.FilmIndex;
import org.barsheet.workbook.pen.PageSize;
import org.barsheet.workbook.pen.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExposureSheetTest {

  private static final int FIRST_LAYER = ExposureColumns.ACTION + 1;

  private static final FilmSheet FILM = SampleFilm.harbour().make();
  private static final WrittenBook BOOK = WrittenBook.of(FILM);

  static List<FrameRate> rates() {
    return FrameRate.ALL;
  }

  @ParameterizedTest
  @MethodSource("rates")
  void every_frame_has_one_row_in_order_with_its_timecode(FrameRate rate) throws IOException {
    FilmSheet atRate =
        SampleFilm.at(rate)
            .shot("1", "Fog", 400)
            .shot("2", "The lamp", 260)
            .reveal("lamp-1", 1, 150, 30, 2)
            .make();
    try (WrittenBook written = WrittenBook.of(atRate)) {
      List<Row> rows = written.frameRows();
      assertThat(rows)
          .extracting(row -> (long) WrittenBook.number(row, ExposureColumns.FILM_FRAME))
          .isEqualTo(LongStream.range(0, 660).boxed().toList());
      assertThat(rows)
          .extracting(row -> WrittenBook.text(row, ExposureColumns.TIMECODE))
          .isEqualTo(
              LongStream.range(0, 660)
                  .mapToObj(frame -> atRate.plan().film().timecode(frame).toString())
                  .toList());
    }
  }

  @Test
  void frames_within_a_shot_count_from_one() {
    for (Shot shot : FILM.timing().shots()) {
      assertThat(framesOf(shot))
          .extracting(row -> (long) WrittenBook.number(row, ExposureColumns.SHOT_FRAME))
          .isEqualTo(LongStream.rangeClosed(1, shot.frames().length()).boxed().toList());
    }
  }

  private static List<Row> framesOf(Shot shot) {
    return BOOK.frameRows().stream()
        .filter(
            row ->
                shot.frames().contains((long) WrittenBook.number(row, ExposureColumns.FILM_FRAME)))
        .toList();
  }

  @Test
  void a_photograph_is_written_once_and_a_line_runs_down_its_hold() {
    List<Row> rows = BOOK.frameRows();
    for (PlannedReveal reveal : FILM.reveals()) {
      int column = FIRST_LAYER + 2 * (reveal.layer() - 1);
      for (Exposure exposure : reveal.exposures()) {
        List<String> cells = new ArrayList<>();
        for (long f = exposure.frames().start(); f < exposure.frames().endExclusive(); f++) {
          cells.add(WrittenBook.text(rows.get((int) f), column));
        }
        assertThat(cells.get(0)).isEqualTo(exposure.photograph().name());
        assertThat(cells.subList(1, cells.size())).allMatch(Signs.HOLD::equals);
      }
    }
  }

  @Test
  void percent_stand_as_numbers_beside_the_photograph() {
    Exposure last = lastOf(FILM.reveals().get(0));
    Row row = BOOK.frameRows().get((int) last.frames().start());
    assertThat(WrittenBook.number(row, FIRST_LAYER + 1)).isEqualTo(100);
  }

  /** In the demo the baker's lamp, open since panel 4, is to open again in panel 21. */
  @Test
  void a_frame_that_the_animator_cannot_take_as_it_stands_points_to_the_finding() {
    FilmSheet demo = DemoFilm.sheet();
    long start = demo.timing().shots().get(20).frames().start();
    try (WrittenBook book = WrittenBook.of(demo)) {
      assertThat(WrittenBook.text(book.frameRows().get((int) start), ExposureColumns.ACTION))
          .isEqualTo("cut to panel 21; hold bakers-lamp closed; × see Film");
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** 99.6 % is not yet fully open: whole numbers would say 100 of it. */
  @Test
  void percent_are_read_to_a_tenth_as_on_the_shooting_card() {
    Exposure last = lastOf(FILM.reveals().get(0));
    Row row = BOOK.frameRows().get((int) last.frames().start());
    assertThat(new DataFormatter(Locale.ROOT).formatCellValue(row.getCell(FIRST_LAYER + 1)).trim())
        .isEqualTo("100");
    CellStyle style = row.getCell(FIRST_LAYER + 1).getCellStyle();
    assertThat(
            new DataFormatter(Locale.ROOT)
                .formatRawCellContents(99.6, style.getDataFormat(), style.getDataFormatString())
                .trim())
        .isEqualTo("99.6");
  }

  private static Exposure lastOf(PlannedReveal reveal) {
    return reveal.exposures().get(reveal.exposures().size() - 1);
  }

  @Test
  void a_hold_of_more_than_half_a_second_is_a_closed_group_under_a_summary() {
    XSSFSheet sheet = BOOK.sheet("Exposure");
    List<Row> summaries = new ArrayList<>();
    sheet.forEach(
        row -> {
          if (WrittenBook.text(row, ExposureColumns.SHOT_FRAME).startsWith("held ")) {
            summaries.add(row);
          }
        });
    assertThat(summaries).isNotEmpty();
    assertThat(sheet.getRowSumsBelow()).isFalse();
    for (Row summary : summaries) {
      long folded =
          Long.parseLong(WrittenBook.text(summary, ExposureColumns.SHOT_FRAME).split(" ", -1)[1]);
      assertThat(folded).isGreaterThan(FILM.timing().clock().rate().nominal() / 2);
      assertThat(sheet.getRow(summary.getRowNum()).getCTRow().getCollapsed()).isTrue();
      for (int below = 1; below <= folded; below++) {
        Row row = sheet.getRow(summary.getRowNum() + below);
        assertThat(row.getZeroHeight()).isTrue();
        assertThat(row.getOutlineLevel()).isEqualTo(1);
      }
      Row next = sheet.getRow(summary.getRowNum() + (int) folded + 1);
      assertThat(next == null || next.getOutlineLevel() == 0).isTrue();
    }
  }

  @Test
  void what_moves_what_lands_and_what_is_said_is_never_folded_away() {
    List<Row> rows = BOOK.frameRows();
    for (PlannedReveal reveal : FILM.reveals()) {
      assertThat(rows.get((int) reveal.landsFrame()).getZeroHeight()).isFalse();
      reveal
          .exposures()
          .forEach(
              exposure ->
                  assertThat(rows.get((int) exposure.frames().start()).getZeroHeight()).isFalse());
    }
  }

  @Test
  void the_cue_a_panel_sits_on_is_never_folded_away() {
    List<Row> rows = BOOK.frameRows();
    for (Shot shot : FILM.timing().shots()) {
      if (shot.frames().contains(shot.cue().frame())) {
        assertThat(rows.get((int) shot.cue().frame()).getZeroHeight()).isFalse();
      }
    }
  }

  @Test
  void the_landing_bears_its_sign_as_well_as_its_color() {
    for (PlannedReveal reveal : FILM.reveals()) {
      Row row = BOOK.frameRows().get((int) reveal.landsFrame());
      assertThat(WrittenBook.text(row, ExposureColumns.ACTION)).startsWith(Signs.ACCENT);
      assertThat(WrittenBook.text(row, ExposureColumns.SOUND)).startsWith(Signs.ACCENT);
    }
  }

  @Test
  void every_frame_has_a_permanent_name_in_a_hidden_column() {
    int column = BOOK.column("Exposure", "row name");
    assertThat(BOOK.sheet("Exposure").isColumnHidden(column)).isTrue();
    List<String> names =
        BOOK.frameRows().stream().map(row -> WrittenBook.text(row, column)).toList();
    assertThat(names).doesNotHaveDuplicates().hasSize((int) FILM.timing().lengthFrames());
    assertThat(names.get(0)).isEqualTo("panel 1 frame 1");
  }

  @ParameterizedTest
  @MethodSource("rates")
  void pages_hold_what_they_have_room_for_and_begin_on_a_part_of_a_second(FrameRate rate) {
    FilmSheet film =
        SampleFilm.at(rate).shot("1", "The lamp", 900).reveal("lamp-1", 1, 800, 350, 2).make();
    FilmIndex index = new FilmIndex(film);
    ExposureColumns columns = new ExposureColumns(index, film.movements());
    PageSize page = columns.page(Film.Paper.A4);
    List<List<ExposureRow>> pages = ExposureSheets.pages(film, index, columns, page);
    assertThat(pages).hasSizeGreaterThan(10);
    for (List<ExposureRow> rows : pages) {
      double height = rows.stream().mapToDouble(ExposureRow::height).sum();
      assertThat(height).isLessThanOrEqualTo(page.height() - ExposureLayout.HEADING_POINTS);
      ExposureRow first = rows.stream().filter(ExposureRow::isInShot).findFirst().orElseThrow();
      int frames = film.plan().film().timecode(first.frame()).frames();
      int quarter = frames * 4 % rate.nominal();
      assertThat(first.frame() == 0 || !first.isFrame() || quarter < 4).isTrue();
    }
  }

  /** The demo, with shots of all lengths. */
  @Test
  void few_pages_hold_all_and_no_landing_or_beginning_is_left_almost_alone() {
    FilmSheet demo = DemoFilm.sheet();
    FilmIndex index = new FilmIndex(demo);
    ExposureColumns columns = new ExposureColumns(index, demo.movements());
    PageSize page = columns.page(Film.Paper.A4);
    double room = page.height() - ExposureLayout.HEADING_POINTS;
    List<List<ExposureRow>> pages = ExposureSheets.pages(demo, index, columns, page);
    double all = pages.stream().flatMap(List::stream).mapToDouble(ExposureRow::height).sum();
    assertThat((double) pages.size()).isLessThanOrEqualTo(Math.ceil(all / room) + 1);
    Set<Long> landings =
        demo.reveals().stream().map(PlannedReveal::landsFrame).collect(Collectors.toSet());
    for (List<ExposureRow> rows : pages) {
      List<ExposureRow> shown =
          rows.stream().filter(row -> row.isInShot() && row.height() > 0).toList();
      boolean goesOn = shown.get(0).frame() > startOf(demo, shown.get(0));
      if (goesOn) {
        assertThat(shown.subList(0, Math.min(4, shown.size())))
            .noneMatch(row -> row.frames() == 1 && landings.contains(row.frame()));
      }
      ExposureRow last = shown.get(shown.size() - 1);
      Shot shot = demo.timing().shots().get(last.shot());
      if (last.frame() + last.frames() < shot.frames().endExclusive()) {
        assertThat(shown.stream().filter(row -> row.shot() == last.shot()).count())
            .isGreaterThanOrEqualTo(4);
      }
    }
  }

  private static long startOf(FilmSheet film, ExposureRow row) {
    return film.timing().shots().get(row.shot()).frames().start();
  }

  @Test
  void a_film_too_long_for_one_sheet_goes_on_on_a_second() {
    FilmIndex index = new FilmIndex(FILM);
    ExposureColumns columns = new ExposureColumns(index, FILM.movements());
    PageSize page = columns.page(FILM.plan().film().paper());
    List<List<ExposureRow>> pages = ExposureSheets.pages(FILM, index, columns, page);
    ExposureSheets sheets =
        new ExposureSheets(
            FILM, columns, page, pages, new ExposureSheets.Limits(3, Integer.MAX_VALUE));
    assertThat(sheets.parts()).hasSize((pages.size() + 2) / 3);
    assertThat(sheets.parts())
        .extracting(ExposureSheets.Part::name)
        .startsWith("Exposure", "Exposure 2");
    long lastFrame = FILM.timing().lengthFrames() - 1;
    assertThat(sheets.addressOf(lastFrame).sheet()).isNotEqualTo("Exposure");
    List<Long> frames =
        sheets.parts().stream()
            .flatMap(part -> part.pages().stream())
            .flatMap(List::stream)
            .filter(ExposureRow::isFrame)
            .map(ExposureRow::frame)
            .toList();
    assertThat(frames).isEqualTo(LongStream.rangeClosed(0, lastFrame).boxed().toList());
  }

  @Test
  void a_pitch_that_several_sound_at_once_is_said_once() throws IOException {
    FilmSheet film =
        SampleFilm.harbour()
            .note(20, SheetNote.Column.SOUND, "F#4")
            .note(20, SheetNote.Column.SOUND, "F#4")
            .note(30, SheetNote.Column.SOUND, "F#4")
            .note(30, SheetNote.Column.SOUND, "glimmer 3, F#4")
            .note(30, SheetNote.Column.SOUND, "A4")
            .make();
    FrameNotes notes = new FrameNotes(film);
    assertThat(notes.text(20, SheetNote.Column.SOUND)).isEqualTo("F#4");
    assertThat(notes.text(30, SheetNote.Column.SOUND)).isEqualTo("glimmer 3, F#4, A4");
  }
}

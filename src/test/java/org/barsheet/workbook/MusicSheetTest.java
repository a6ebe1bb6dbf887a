package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.barsheet.clock.FrameRate;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.FilmIndex;
import org.barsheet.workbook.pen.Signs;
import org.junit.jupiter.api.Test;

class MusicSheetTest {

  private static final FilmSheet FILM = SampleFilm.harbour().make();
  private static final WrittenBook BOOK = WrittenBook.of(FILM);
  private static final int CELLS = MusicWorksheet.CELLS_A_BAR;

  @Test
  void every_bar_has_its_number_four_to_a_system() {
    List<Integer> numbers = new ArrayList<>();
    for (Row row : BOOK.sheet("Music")) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.NUMERIC) {
          assertThat(cell.getColumnIndex() % CELLS).isZero();
          numbers.add((int) cell.getNumericCellValue());
        }
      }
    }
    assertThat(numbers)
        .isEqualTo(FILM.timing().bars().stream().map(bar -> bar.bar().number()).toList());
  }

  @Test
  void every_panel_stands_over_the_cell_in_which_its_shot_begins() {
    for (Shot shot : FILM.timing().shots()) {
      String name = shot.panel().name();
      List<Cell> boxes = cellsWith(" " + name + "  " + shot.panel().action(), " " + name);
      FilmBar bar = new FilmIndex(FILM).barAt(shot.frames().start());
      long into = Math.max(0, shot.frames().start() - bar.startFrame());
      int cell = bar.bar().index() % 4 * CELLS + (int) (into * CELLS / bar.lengthFrames());
      assertThat(boxes.get(0).getColumnIndex()).as(name).isEqualTo(cell);
    }
  }

  @Test
  void every_counted_return_is_named() {
    for (Cue cue : FILM.timing().cues()) {
      if (cue.kind() == Cue.Kind.RETURN) {
        assertThat(texts()).anyMatch(text -> text.contains(cue.title()));
      }
    }
  }

  @Test
  void every_reveal_shows_its_opening_and_the_sign_of_its_landing() {
    List<String> texts = texts();
    FILM.reveals()
        .forEach(reveal -> assertThat(texts).anyMatch(t -> t.contains(reveal.opening().name())));
    assertThat(texts.stream().filter(Signs.ACCENT::equals)).hasSize(FILM.reveals().size());
  }

  @Test
  void a_film_that_ends_before_its_music_begins_still_prints() {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).shot("1", "Fog", 30).make();
    assertThat(WorkbookWriter.bytes(film)).isNotEmpty();
  }

  private static List<Cell> cellsWith(String... anyOf) {
    return textCells().stream()
        .filter(cell -> List.of(anyOf).contains(cell.getStringCellValue()))
        .toList();
  }

  private static List<String> texts() {
    return textCells().stream().map(Cell::getStringCellValue).toList();
  }

  private static List<Cell> textCells() {
    List<Cell> cells = new ArrayList<>();
    for (Row row : BOOK.sheet("Music")) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.STRING) {
          cells.add(cell);
        }
      }
    }
    return cells;
  }
}

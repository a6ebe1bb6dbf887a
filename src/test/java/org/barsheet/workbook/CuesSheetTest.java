package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.barsheet.cues.Cue;
import org.barsheet.exposure.Appearance;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.MotifTally;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.Signs;
import org.junit.jupiter.api.Test;

class CuesSheetTest {

  @Test
  void the_composer_reads_below_the_cues_what_the_film_asks_of_the_music() throws IOException {
    FilmSheet film = SampleFilm.harbour().make();
    List<String> said = new ArrayList<>();
    try (WrittenBook book = WrittenBook.of(film)) {
      XSSFSheet sheet = book.sheet("Cues");
      int heading = SheetFrame.FIRST_ROW + film.timing().cues().size() + 1;
      assertThat(WrittenBook.text(sheet.getRow(heading), 0)).isEqualTo("For the composer");
      for (int row = heading + 1; sheet.getRow(row) != null; row++) {
        said.add(WrittenBook.text(sheet.getRow(row), book.column("Cues", "cue")));
      }
      Row first = sheet.getRow(SheetFrame.FIRST_ROW);
      assertThat(WrittenBook.text(first, book.column("Cues", "cue")))
          .isEqualTo(film.timing().cues().get(0).title());
    }
    MotifTally tally = film.timing().tallies().get(0);
    assertThat(said.get(0))
        .startsWith("Motif " + tally.motif() + ": ")
        .endsWith("found, " + tally.used() + " used, " + tally.spare() + " spare.");
    for (Appearance appearance : film.appearances()) {
      assertThat(said)
          .anySatisfy(
              line ->
                  assertThat(line)
                      .contains(appearance.performer().name() + " is seen in ")
                      .contains(
                          appearance.sounding() == 0
                              ? " rests."
                              : Math.round(100 * appearance.sounding()) + " % of the time."));
    }
  }

  /**
   * The note that a reveal lands on has its own timecode and frame, only where it is another note.
   */
  @Test
  void the_accent_stands_beside_the_first_note_where_it_is_another() throws IOException {
    FilmSheet film = SampleFilm.harbour().make();
    try (WrittenBook book = WrittenBook.of(film)) {
      int timecode = book.column("Cues", Signs.ACCENT + " accent");
      int frame = book.column("Cues", Signs.ACCENT + " frame");
      assertThat(film.timing().cues()).anyMatch(Cue::hasAccentElsewhere);
      for (int i = 0; i < film.timing().cues().size(); i++) {
        Cue cue = film.timing().cues().get(i);
        Row row = book.sheet("Cues").getRow(SheetFrame.FIRST_ROW + i);
        if (cue.hasAccentElsewhere()) {
          assertThat((long) WrittenBook.number(row, frame)).isEqualTo(cue.accentFrame());
          assertThat(WrittenBook.text(row, timecode))
              .isEqualTo(film.plan().film().timecode(cue.accentFrame()).toString());
        } else {
          assertThat(row.getCell(frame).toString() + row.getCell(timecode)).isEmpty();
        }
      }
    }
  }
}

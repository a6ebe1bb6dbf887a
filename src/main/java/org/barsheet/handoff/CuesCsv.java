package org.barsheet.handoff;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;

/**
 * Every cue as a row. {@code frame} counts from the film's first frame, from 0; {@code seconds}
 * from the score's tick 0; both are of the cue's first moment; {@code bar} and {@code beat} are
 * empty before the music. {@code accent_frame} is that of the note the reveal is to land on, and
 * {@code landings} say where each reveal of the panel lands.
 */
final class CuesCsv {

  private static final List<String> COLUMNS =
      List.of(
          "cue",
          "kind",
          "bar",
          "beat",
          "timecode",
          "frame",
          "seconds",
          "certainty",
          "form",
          "parts",
          "panel",
          "accent_timecode",
          "accent_frame",
          "landings");
  private static final int SECONDS_DECIMALS = 6;
  private static final String BETWEEN = "; ";

  private CuesCsv() {}

  static void write(FilmSheet sheet, OutputStream out) throws IOException {
    Film film = sheet.plan().film();
    CueShots shots = new CueShots(sheet);
    try (CsvFile table = new CsvFile(out, film.rate(), COLUMNS)) {
      for (Cue cue : sheet.timing().cues()) {
        table.row(
            cue.title(),
            CueWords.kind(cue),
            cue.isBeforeMusic() ? "" : cue.place().bar(),
            cue.isBeforeMusic() ? "" : new BigDecimal(cue.place().beatText()),
            film.timecode(cue.frame()).toString(),
            cue.frame(),
            cue.at().toDecimal(SECONDS_DECIMALS),
            CueWords.certainty(cue),
            cue.formWords(),
            String.join(BETWEEN, CueWords.parts(sheet, cue)),
            String.join(BETWEEN, shots.panelsOn(cue)),
            film.timecode(cue.accentFrame()).toString(),
            cue.accentFrame(),
            landings(sheet, shots.on(cue)));
      }
    }
  }

  private static String landings(FilmSheet sheet, List<Shot> shots) {
    Film film = sheet.plan().film();
    return shots.stream()
        .flatMap(shot -> sheet.revealsOf(shot).stream())
        .map(reveal -> CueWords.landing(film, reveal))
        .collect(Collectors.joining(BETWEEN));
  }
}

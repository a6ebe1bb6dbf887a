package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.Appearance;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.MotifTally;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.SheetWords;

/** What the film asks of the music: returns, openings, room for reveals, and who sounds when. */
final class ComposerSection {

  private ComposerSection() {}

  /** One sentence a line. */
  static List<String> lines(FilmSheet film) {
    List<String> lines = new ArrayList<>();
    film.timing().tallies().forEach(tally -> lines.add(returns(tally)));
    film.findings().stream()
        .filter(finding -> finding.concerns() == Concerns.COMPOSER)
        .forEach(finding -> lines.add(sentence(finding)));
    film.appearances().forEach(appearance -> lines.add(sounding(film, appearance)));
    return lines;
  }

  private static String returns(MotifTally tally) {
    return "Motif "
        + tally.motif()
        + ": "
        + SheetWords.count(tally.found(), "return")
        + " found, "
        + tally.used()
        + " used, "
        + tally.spare()
        + " spare.";
  }

  private static String sentence(Finding finding) {
    String where = finding.panel().isEmpty() ? finding.place() : panel(finding);
    return SheetWords.sentence(
        where.isEmpty() ? finding.sentence() : where + ": " + finding.sentence());
  }

  private static String panel(Finding finding) {
    String place = finding.place().isEmpty() ? "" : ", " + finding.place();
    return "Panel " + finding.panel() + place;
  }

  private static String sounding(FilmSheet film, Appearance appearance) {
    Shot shot = film.timing().shots().get(appearance.shot());
    String part = appearance.performer().part();
    String seen =
        "Panel "
            + shot.panel().name()
            + ", "
            + shot.startsAt()
            + ": "
            + appearance.performer().name()
            + " is seen in "
            + appearance.opening().name();
    if (part.isEmpty()) {
      return seen + ".";
    }
    return appearance.sounding() == 0
        ? seen + "; " + part + " rests."
        : seen
            + "; "
            + part
            + " plays "
            + Math.round(100 * appearance.sounding())
            + " % of the time.";
  }
}

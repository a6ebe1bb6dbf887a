package org.barsheet.handoff;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.cues.Cue;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.plan.Reveal;
import org.barsheet.score.Part;

/** What is said of a cue, in the same words in every file. */
final class CueWords {

  private CueWords() {}

  /** {@code occurrence}, {@code mark}, {@code into-panel} … */
  static String kind(Cue cue) {
    return word(cue.kind());
  }

  /** {@code certain}, {@code likely}, {@code possible}, or "" for a cue of no motif. */
  static String certainty(Cue cue) {
    return cue.occurrence().map(occurrence -> word(occurrence.certainty())).orElse("");
  }

  /** Names of the parts that play it, the leading one first; none for a cue of no motif. */
  static List<String> parts(FilmSheet sheet, Cue cue) {
    List<Part> parts = sheet.timing().music().score().parts();
    return cue.occurrence()
        .map(
            occurrence ->
                occurrence.parts().stream().map(index -> parts.get(index).name()).toList())
        .orElse(List.of());
  }

  /** {@code bar 9}, where the cue's title does not say it already. */
  static Optional<String> place(Cue cue) {
    String place = cue.place().toString();
    return cue.isBeforeMusic() || cue.title().equals(place) ? Optional.empty() : Optional.of(place);
  }

  /** {@code cue glimmer 1, frame 708, 01:00:29:12}. */
  static String line(Film film, Cue cue) {
    return "cue " + cue.title() + ", " + moment(film, cue.frame());
  }

  /** {@code accent on frame 738, 01:00:30:18}, where the accent is not the cue's first moment. */
  static Optional<String> accent(Film film, Cue cue) {
    return cue.hasAccentElsewhere()
        ? Optional.of("accent on " + moment(film, cue.accentFrame()))
        : Optional.empty();
  }

  /**
   * {@code bakers-lamp lands on frame 738, 01:00:30:18}, followed by {@code half open} or {@code
   * first gap} where it goes on moving.
   */
  static String landing(Film film, PlannedReveal reveal) {
    boolean whole = reveal.reveal().lands() == Reveal.Lands.FULLY_OPEN;
    return reveal.opening().name()
        + " lands on "
        + moment(film, reveal.landsFrame())
        + (whole ? "" : ", " + reveal.landing());
  }

  private static String moment(Film film, long frame) {
    return "frame " + frame + ", " + film.timecode(frame);
  }

  /** A constant as files spell it: {@code INTO_PANEL} is {@code into-panel}. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

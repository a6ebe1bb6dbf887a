package org.barsheet.production;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.input.Nearest;
import org.barsheet.input.Problem;
import org.barsheet.plan.Film;
import org.barsheet.score.BarBeat;
import org.barsheet.timing.Shot;

/**
 * Places of a film.
 *
 * @param film its settings
 * @param spots the moments asked for
 */
public record Located(Film film, List<Spot> spots) {

  private static final Pattern PANEL = Pattern.compile("\\s*panel\\s+(\\S+)\\s*");

  public Located {
    spots = List.copyOf(spots);
  }

  /**
   * One moment.
   *
   * @param title what is there: "glimmer 3", "panel 17"
   * @param place in bars
   * @param at from tick 0 of the score
   * @param frame of the film
   */
  public record Spot(String title, BarBeat place, Seconds at, long frame) {

    static Spot of(Cue cue) {
      return new Spot(cue.title(), cue.place(), cue.at(), cue.frame());
    }

    /**
     * Where a panel's shot begins.
     *
     * @throws InputException if no panel has this name
     */
    static Spot ofPanel(String panel, FilmSheet sheet) {
      Shot shot =
          sheet.timing().shots().stream()
              .filter(each -> each.panel().name().equals(panel))
              .findFirst()
              .orElseThrow(() -> new InputException(unknown(panel, sheet)));
      long frame = shot.frames().start();
      Seconds at = sheet.timing().clock().scoreTime(frame);
      return new Spot("panel " + panel, shot.startsAt(), at, frame);
    }

    private static Problem unknown(String panel, FilmSheet sheet) {
      List<String> names =
          sheet.timing().shots().stream().map(shot -> shot.panel().name()).toList();
      return Problem.at(
          sheet.plan().text().file().toString(),
          "'panel " + panel + "'",
          "no panel is called " + panel,
          Nearest.remedy(panel, names, "the plan has none"));
    }
  }

  /** The panel's name where a text asks for one: {@code panel 17}. */
  static Optional<String> panelIn(String text) {
    return Optional.of(PANEL.matcher(text)).filter(Matcher::matches).map(match -> match.group(1));
  }
}

package org.barsheet.production.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.MusicRuler;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.input.Nearest;
import org.barsheet.input.Problem;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.Film;
import org.barsheet.plan.Length;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.IntoPanel;
import org.barsheet.score.BarBeat;
import org.barsheet.timing.Shot;

/**
 * Places of a film.
 *
 * @param film its settings
 * @param spots the moments asked for
 */
public record Located(Film film, List<Spot> spots) {

  private static final Length BEGINNING = Length.of(Length.Unit.FRAMES, BigFraction.ZERO);
  private static final Pattern PANEL = Pattern.compile("\\s*panel\\s+(\\S+)\\s*");

  public Located {
    spots = List.copyOf(spots);
  }

  /**
   * Finds places.
   *
   * @param returns of the film's plan
   * @param places as {@link #parse} reads them, in the order asked
   * @param film asked for only where a place counts from a panel
   * @throws InputException with every place that cannot be read, or found
   */
  public static Located of(Returns returns, List<String> places, Supplier<FilmSheet> film) {
    List<Place> asked = parsed(places, returns.plan().film());
    List<Place> inMusic = asked.stream().filter(place -> !(place instanceof IntoPanel)).toList();
    returns.find(inMusic);
    Optional<FilmSheet> planned =
        inMusic.size() == asked.size() ? Optional.empty() : Optional.of(film.get());
    List<Spot> spots = new ArrayList<>();
    for (Place place : asked) {
      if (place instanceof IntoPanel into) {
        spots.add(Spot.into(into, planned.orElseThrow()));
      } else {
        returns.find(List.of(place)).stream().map(Spot::of).forEach(spots::add);
      }
    }
    return new Located(returns.plan().film(), spots);
  }

  private static List<Place> parsed(List<String> places, Film film) {
    List<Place> parsed = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String place : places) {
      try {
        parsed.add(parse(place, film));
      } catch (SyntaxException unclear) {
        problems.add(Problem.at("", "", unclear));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return parsed;
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
     * Where a panel's shot begins, or so long after that.
     *
     * @throws InputException if no panel has this name
     */
    public static Spot into(IntoPanel place, FilmSheet sheet) {
      String panel = place.panel();
      Shot shot =
          sheet.timing().shots().stream()
              .filter(each -> each.panel().name().equals(panel))
              .findFirst()
              .orElseThrow(() -> new InputException(unknown(panel, sheet)));
      long start = shot.frames().start();
      if (place.offset().equals(BEGINNING)) {
        Seconds at = sheet.timing().clock().scoreTime(start);
        return new Spot("panel " + panel, shot.startsAt(), at, start);
      }
      MusicRuler ruler = new MusicRuler(sheet.timing().music(), sheet.timing().clock());
      Length offset = place.offset();
      Seconds at = ruler.advance(ruler.momentOf(start), offset.unit(), offset.most());
      return new Spot(place.toString(), ruler.locate(at), at, ruler.frameAt(at));
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

  /**
   * Reads a place of a film as the plan spells it; {@code panel 17} is where that begins.
   *
   * @throws SyntaxException at the first character that does not belong
   */
  public static Place parse(String text, Film film) {
    Matcher panel = PANEL.matcher(text);
    return panel.matches()
        ? new IntoPanel(panel.group(1), BEGINNING)
        : Place.parse(text, film.rate());
  }
}

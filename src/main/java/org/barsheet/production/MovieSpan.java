package org.barsheet.production;

import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.MotifSearch;
import org.barsheet.cues.Places;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.input.SyntaxException;
import org.barsheet.movie.Movie;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.IntoPanel;
import org.barsheet.plan.Plan;
import org.barsheet.production.places.Located;

/** Which frames of a film a movie shows. */
final class MovieSpan {

  private final FilmSheet film;

  private MovieSpan(FilmSheet film) {
    this.film = film;
  }

  /**
   * The frames asked for. With head and click a movie of the whole film begins with the head.
   *
   * @throws InputException if a place is none, or nothing lies between the two
   */
  static FrameSpan of(FilmSheet film, MovieAsk ask) {
    MovieSpan span = new MovieSpan(film);
    long length = film.timing().lengthFrames();
    long head = ask.click() ? -Movie.headFrames(film) : 0;
    long from = ask.from().map(place -> span.frame(place, "--from")).orElse(head);
    long to = ask.to().map(place -> span.frame(place, "--to")).orElse(length);
    if (to <= from || from >= length || to > length) {
      String where =
          ask.from().map(p -> "--from " + p + " ").orElse("")
              + ask.to().map(p -> "--to " + p).orElse("");
      throw new InputException(
          Problem.ofFile(
              where.strip(),
              "no frame of the film lies there",
              "name two places of the film, the later one after --to"));
    }
    return new FrameSpan(from, to);
  }

  private long frame(String text, String option) {
    Plan plan = film.plan();
    try {
      Place place = Located.parse(text, plan.film());
      if (place instanceof IntoPanel into) {
        return Located.Spot.into(into, film).frame();
      }
      return Places.find(
              plan,
              film.timing().music(),
              MotifSearch.of(plan, film.timing().music()).occurrences(),
              List.of(place))
          .get(0)
          .frame();
    } catch (SyntaxException unclear) {
      throw new InputException(Problem.at("", option, unclear));
    }
  }
}

package org.barsheet.plan.read;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.Film;
import org.barsheet.plan.Measures;
import org.barsheet.plan.Place;
import org.barsheet.plan.PlaceGrammar;
import org.barsheet.plan.WordChoice;

/** Reads the settings of the film. */
final class FilmSection {

  private static final int FRAME_WIDTH = 1920;
  private static final int FRAME_HEIGHT = 1080;
  private static final int CLOSED_HOLD = 12;
  private static final Seconds LONGEST_POP = Seconds.of(60);

  /** No recording begins so long before the film; a timecode that says so is a slip. */
  private static final Seconds EARLIEST = Seconds.of(-600);

  private static final WordChoice<Film.Paper> PAPERS =
      WordChoice.of(
          List.of(Film.Paper.values()), paper -> paper == Film.Paper.A4 ? "A4" : "letter");

  private final PlanSection section;
  private final Optional<FrameRate> rate;

  private FilmSection(PlanSection section) {
    this.section = section;
    this.rate =
        section.need("frame-rate", Optional.<FrameRate>empty(), rates(), FilmSection::someRate);
  }

  private static Optional<FrameRate> someRate(String text) {
    return Optional.of(FrameRate.parse(text.replaceFirst("\\s*fps$", "")));
  }

  private static String rates() {
    return "write one of: "
        + String.join(", ", FrameRate.ALL.stream().map(FrameRate::toString).toList());
  }

  static FilmSection read(PlanSection section) {
    return new FilmSection(section);
  }

  /** A place at the film's rate; where the rate is not known, timecodes are left unread. */
  Place place(String text) {
    if (rate.isEmpty() && PlaceGrammar.looksLikeTimecode(text)) {
      return new Place.Anywhere();
    }
    return Place.parse(text, rateOrStandIn());
  }

  /**
   * A moment from film frame 0, written as a time from the music's start or as a timecode; nothing
   * where the rate that a timecode needs is not known.
   */
  Optional<Seconds> sinceFirstFrame(String text, Film film) {
    if (!PlaceGrammar.looksLikeTimecode(text)) {
      Seconds start = film.rate().startOf(film.musicStartFrame());
      return Optional.of(start.plus(Measures.time(text, film.rate(), true)));
    }
    return rate.map(known -> sinceFirstFrame(Timecode.parse(known, text), film));
  }

  private static Seconds sinceFirstFrame(Timecode moment, Film film) {
    long frame = moment.framesSince(film.firstFrame());
    Seconds time = film.rate().startOf(frame);
    if (time.compareTo(EARLIEST) < 0) {
      throw new SyntaxException(
          moment.toString(),
          0,
          "this is long before the film's first frame, " + film.firstFrame(),
          "write a timecode of the film, or a time from the music's start: -0.5 s");
    }
    return time;
  }

  private FrameRate rateOrStandIn() {
    return rate.orElse(FrameRate.FPS_24);
  }

  private static Optional<Seconds> pop(String text, FrameRate rate) {
    if (text.strip().equalsIgnoreCase("none")) {
      return Optional.empty();
    }
    Seconds before = Measures.time(text, rate, false);
    if (before.signum() == 0 || before.compareTo(LONGEST_POP) > 0) {
      throw new SyntaxException(
          text,
          0,
          "the pop must sound within 60 s before the first frame",
          "write pop: 2 s, or pop: none");
    }
    return Optional.of(before);
  }

  Film film() {
    FrameRate known = rateOrStandIn();
    Timecode hourOne = new Timecode(known, 1, 0, 0, 0);
    int[] size = {FRAME_WIDTH, FRAME_HEIGHT};
    size = section.read("frame-size", size, text -> Measures.pixels(text, "1920x1080"));
    return new Film(
        known,
        section.read(
            "first-frame", hourOne, text -> rate.isEmpty() ? hourOne : Timecode.parse(known, text)),
        section.read("music-starts", Seconds.ZERO, text -> Measures.time(text, known, false)),
        section.read(
            "music-from", Film.MusicFrom.START_OF_FILE, WordChoice.of(Film.MusicFrom.values())),
        section.read("shown", 2, WordChoice.SHOWN),
        section.read("lead", 0, text -> Measures.frames(text, true)),
        section.read("closed-hold", CLOSED_HOLD, text -> Measures.frames(text, false)),
        section.read("tail", Seconds.ZERO, text -> Measures.time(text, known, false)),
        size[0],
        size[1],
        section.read("pop", Optional.of(Film.USUAL_POP), text -> pop(text, known)),
        section.read("paper", Film.Paper.A4, PAPERS));
  }
}

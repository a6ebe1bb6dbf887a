package org.barsheet.cues;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.input.Nearest;
import org.barsheet.input.Problem;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Film;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.AtBar;
import org.barsheet.plan.Place.AtMark;
import org.barsheet.plan.Place.AtTimecode;
import org.barsheet.plan.Place.OfMotif;
import org.barsheet.plan.Played;
import org.barsheet.plan.Where;
import org.barsheet.pulse.Music;
import org.barsheet.score.Bar;
import org.barsheet.score.BarBeat;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Part;

/** Finds the moments that a place of the plan can mean. */
public final class PlaceResolver {

  /** How many names are offered for one that is not there. */
  static final int NAMES_OFFERED = 3;

  /** A place that cannot be found: what is wrong and what to write instead. */
  private static final class Unfound extends Exception {
    private static final long serialVersionUID = 1L;
    private final String sentence;
    private final String remedy;

    Unfound(String sentence, String remedy) {
      super(sentence);
      this.sentence = sentence;
      this.remedy = remedy;
    }
  }

  private final Music music;
  private final Film film;
  private final FilmClock clock;
  private final Cues cues;
  private final long filmFrames;
  private final Map<Integer, List<Bar>> barsByNumber;
  private final List<Problem> problems = new ArrayList<>();

  public PlaceResolver(Music music, Film film, FilmClock clock, Cues cues, long filmFrames) {
    this.music = music;
    this.film = film;
    this.clock = clock;
    this.cues = cues;
    this.filmFrames = filmFrames;
    this.barsByNumber = music.bars().bars().stream().collect(Collectors.groupingBy(Bar::number));
  }

  /** Everything that could not be found so far, in the order asked. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** The same, which are forgotten then. */
  List<Problem> takeProblems() {
    List<Problem> taken = List.copyOf(problems);
    problems.clear();
    return taken;
  }

  /** Notes down a place that is found but cannot be used. */
  public void refuse(Where where, String sentence, String remedy) {
    problems.add(Problem.at(where.file(), where.position(), sentence, remedy));
  }

  /**
   * The moments a place can mean, in order of time: one, or for "any glimmer" each of its returns.
   * Empty, with a problem noted, if there is none. Not for {@code Anywhere} and {@code IntoPanel},
   * which depend on the panels around them.
   */
  public List<Cue> resolve(Place place, Where where) {
    try {
      List<Cue> found = find(place);
      for (Cue cue : found) {
        if (found.size() == 1) {
          checkInFilm(place, cue);
        }
      }
      return found.stream().allMatch(this::isInFilm)
          ? found
          : found.stream().filter(this::isInFilm).toList();
    } catch (Unfound unfound) {
      refuse(where, unfound.sentence, unfound.remedy);
      return List.of();
    }
  }

  private List<Cue> find(Place place) throws Unfound {
    if (place instanceof OfMotif motif) {
      return ofMotif(motif);
    }
    if (place instanceof AtBar bar) {
      return List.of(atBar(bar));
    }
    if (place instanceof AtMark mark) {
      return List.of(atMark(mark.name()));
    }
    if (place instanceof AtTimecode at) {
      return List.of(atTimecode(at));
    }
    throw new Unfound(
        "this place can't depend on a panel or a motif", "write a bar, a mark or a timecode");
  }

  private boolean isInFilm(Cue cue) {
    return cue.frame() >= 0 && cue.frame() < filmFrames;
  }

  private void checkInFilm(Place place, Cue cue) throws Unfound {
    if (!isInFilm(cue)) {
      boolean early = cue.frame() < 0;
      throw new Unfound(
          place + " is " + (early ? "before the film begins" : "after the film's last frame"),
          early
              ? "start the music later (music-starts), or choose a later place"
              : "choose an earlier place, or lengthen film.tail");
    }
  }

  private List<Cue> ofMotif(OfMotif place) throws Unfound {
    List<Cue> found = cues.counted(place.motif());
    if (found.isEmpty()) {
      throw new Unfound(
          "no return of " + place.motif() + " was found in the score",
          "check the motif's notes, allow more forms, or name a bar; find shows how near it comes");
    }
    if (place.number().isPresent()) {
      return List.of(numbered(place, found));
    }
    List<Cue> played = played(place, found);
    return place.nearBar().isPresent() ? List.of(nearest(place.nearBar(), played)) : played;
  }

  /** Those in the form and by the part that the place names. */
  private List<Cue> played(OfMotif place, List<Cue> found) throws Unfound {
    Played asked = place.played();
    Optional<Part> part = asked.part().isEmpty() ? Optional.empty() : part(asked.part().get());
    List<Cue> played =
        found.stream().filter(cue -> isSo(cue.occurrence().orElseThrow(), asked, part)).toList();
    if (played.isEmpty()) {
      throw new Unfound(
          "no return of " + place.motif() + " is heard" + asked,
          "write another part or form, or leave it out; find lists every return");
    }
    return played;
  }

  private static boolean isSo(Occurrence occurrence, Played asked, Optional<Part> part) {
    return occurrence.variation().forms().containsAll(asked.forms())
        && (part.isEmpty() || occurrence.parts().contains(part.get().index()));
  }

  private Optional<Part> part(String name) throws Unfound {
    List<Part> parts = music.score().parts();
    Optional<Part> part =
        parts.stream().filter(one -> plain(one.name()).equals(plain(name))).findFirst();
    if (part.isEmpty()) {
      List<String> near =
          Nearest.ranked(name, parts.stream().map(Part::name).toList(), NAMES_OFFERED);
      throw new Unfound(
          "the score has no part '" + name + "'",
          "parts that look like it: " + String.join(", ", near));
    }
    return part;
  }

  private static Cue numbered(OfMotif place, List<Cue> found) throws Unfound {
    int wanted = place.number().orElseThrow();
    for (Cue cue : found) {
      if (cue.number() == wanted) {
        return cue;
      }
    }
    Cue last = found.get(found.size() - 1);
    throw new Unfound(
        "you asked for " + place + "; the score has only " + found.size(),
        wanted < 1
            ? "returns count from 1"
            : "the last one is " + last.title() + " in bar " + last.place().bar());
  }

  private Cue nearest(OptionalInt bar, List<Cue> found) throws Unfound {
    List<Bar> bars = barsNumbered(bar.orElseThrow());
    return found.stream().min(Comparator.comparingLong(cue -> distance(cue, bars))).orElseThrow();
  }

  private static long distance(Cue cue, List<Bar> bars) {
    long tick = cue.occurrence().orElseThrow().startTick();
    return bars.stream()
        .mapToLong(bar -> Math.abs(bar.startTick() - tick))
        .min()
        .orElse(Long.MAX_VALUE);
  }

  private List<Bar> barsNumbered(int number) throws Unfound {
    BarGrid grid = music.bars();
    List<Bar> bars = barsByNumber.getOrDefault(number, List.of());
    if (bars.isEmpty()) {
      throw new Unfound("there is no bar " + number, barsOf(grid));
    }
    return bars;
  }

  private static String barsOf(BarGrid grid) {
    int first = grid.first().number();
    return grid.bars().size() == 1
        ? "the music has only bar " + first
        : "the music has bars " + first + " to " + grid.last().number();
  }

  private Cue atBar(AtBar place) throws Unfound {
    Bar bar = theBar(place);
    BigFraction past = BigFraction.of(bar.beatTicks().size() + 1);
    if (place.beat().compareTo(past) >= 0) {
      int beats = bar.beatTicks().size();
      throw new Unfound(
          "bar " + place.bar() + " has " + beats + (beats == 1 ? " beat" : " beats"),
          "beats count from 1; the next bar is bar " + (place.bar() + 1));
    }
    Seconds at = music.tempo().secondsAt(music.bars().tickOf(bar, place.beat()));
    return cues.atBar(new BarBeat(bar.number(), bar.time(), place.beat()), at);
  }

  private Bar theBar(AtBar place) throws Unfound {
    List<Bar> bars = barsNumbered(place.bar());
    if (place.time().isEmpty() && bars.size() == 1) {
      return bars.get(0);
    }
    for (Bar bar : bars) {
      if (place.time().isPresent() && bar.time() == place.time().getAsInt()) {
        return bar;
      }
    }
    String times =
        bars.stream()
            .map(
                bar -> "'bar " + bar.number() + " time " + bar.time() + "' (" + timecode(bar) + ")")
            .collect(Collectors.joining(" or "));
    String played = bars.size() == 1 ? "once" : bars.size() == 2 ? "twice" : bars.size() + " times";
    throw new Unfound("bar " + place.bar() + " is played " + played, "write " + times);
  }

  private String timecode(Bar bar) {
    return film.timecode(clock.frameAt(music.tempo().secondsAt(bar.startTick()))).toString();
  }

  private Cue atMark(String name) throws Unfound {
    List<Cue> found = cues.marks().stream().filter(mark -> sameMark(mark, name)).toList();
    if (found.size() == 1) {
      return found.get(0);
    }
    if (found.isEmpty()) {
      List<String> names =
          Nearest.ranked(name, cues.marks().stream().map(Cue::name).toList(), NAMES_OFFERED);
      throw new Unfound(
          "the file has no mark '" + name + "'",
          names.isEmpty()
              ? "the file has no marks at all; name a bar"
              : "the nearest marks: " + String.join(", ", names));
    }
    String bars =
        found.stream().map(mark -> mark.place().toString()).collect(Collectors.joining(", "));
    throw new Unfound(
        "the file has " + found.size() + " marks '" + name + "': at " + bars, "name the bar");
  }

  private static boolean sameMark(Cue mark, String name) {
    return plain(mark.name()).equals(plain(name));
  }

  private static String plain(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  private Cue atTimecode(AtTimecode place) throws Unfound {
    long frame = place.timecode().framesSince(film.firstFrame());
    if (frame < 0 || frame >= filmFrames) {
      throw new Unfound(
          place + " is outside the film",
          "the film runs from " + film.timecode(0) + " to " + film.timecode(filmFrames - 1));
    }
    return cues.atTimecode(place.timecode(), clock.scoreTime(frame));
  }
}

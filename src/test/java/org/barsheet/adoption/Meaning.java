package org.barsheet.adoption;

import java.util.List;
import java.util.Optional;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.cues.FilmClock;
import org.barsheet.cues.MotifSearch;
import org.barsheet.cues.MusicRuler;
import org.barsheet.cues.PlaceResolver;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Where;
import org.barsheet.pulse.Music;
import org.barsheet.score.BarBeat;

/** Which of the composer's bars a plan's places mean. */
final class Meaning {

  private final ComposedScore score;
  private final Plan plan;
  private final PlaceResolver places;
  private final Optional<FilmSheet> film;

  Meaning(ComposedScore score, FilmSheet film) {
    this(score, film.plan(), film.timing().music(), Optional.of(film));
  }

  Meaning(ComposedScore score, Plan plan, Music music, Optional<FilmSheet> film) {
    FilmClock clock = FilmClock.of(plan.film(), music);
    Cues cues = new Cues(music, new MusicRuler(music, clock), returns(plan, music));
    this.score = score;
    this.plan = plan;
    this.places = new PlaceResolver(music, plan.film(), clock, cues, 1_000_000);
    this.film = film;
  }

  private static List<Occurrence> returns(Plan plan, Music music) {
    try {
      return MotifSearch.of(plan, music).occurrences();
    } catch (InputException motifIsNotHeardAnyMore) {
      return List.of();
    }
  }

  /** Who the bar is that a place means, and the beat in it. */
  Optional<String> of(String standing) {
    String[] words = standing.split(" ", -1);
    Panel panel =
        plan.panels().stream().filter(one -> one.name().equals(words[1])).findFirst().orElseThrow();
    Place place = panel.cue();
    if (words[2].equals("cut")) {
      place = ((Panel.AtPlace) panel.cut()).place();
    } else if (words[2].equals("lamp")) {
      place = ((Reveal.OnPlace) panel.reveals().get(0).landsOn()).place();
    }
    return place instanceof Place.IntoPanel ? made(panel.name()) : resolved(place);
  }

  private Optional<String> made(String panel) {
    return film.flatMap(
            made ->
                made.timing().shots().stream()
                    .filter(shot -> shot.panel().name().equals(panel))
                    .findFirst())
        .map(shot -> identity(shot.cue().place()));
  }

  private Optional<String> resolved(Place place) {
    List<Cue> found = places.resolve(place, new Where("", ""));
    return found.stream().findFirst().map(cue -> identity(cue.place()));
  }

  private String identity(BarBeat place) {
    return score.bars().get(place.bar() - 1).id() + " beat " + place.beat();
  }
}

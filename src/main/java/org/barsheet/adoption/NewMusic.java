package org.barsheet.adoption;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.cues.FilmClock;
import org.barsheet.cues.MusicRuler;
import org.barsheet.cues.PlaceResolver;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Length;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Where;
import org.barsheet.pulse.Music;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.ScoreNotes;

/** The new version of the music, and what places mean in it. */
final class NewMusic {

  private static final Where NOWHERE = new Where("", "");

  private final Plan plan;
  private final Music music;
  private final FilmClock clock;
  private final MusicRuler ruler;
  private final Cues cues;
  private final PlaceResolver places;
  private final Map<HeldReturn, Cue> returns = new LinkedHashMap<>();

  NewMusic(Plan plan, Music music, List<Occurrence> found) {
    this.plan = plan;
    this.music = music;
    this.clock = FilmClock.of(plan.film(), music);
    this.ruler = new MusicRuler(music, clock);
    this.cues = new Cues(music, ruler, found);
    Seconds end = music.lastSoundingBarEnd().plus(plan.film().tail());
    this.places = new PlaceResolver(music, plan.film(), clock, cues, clock.frameAt(end));
    for (Cue cue : cues.with(List.of())) {
      cue.occurrence().ifPresent(one -> returns.put(ScoreNotes.held(one, music), cue));
    }
  }

  /** Every return with its notes, in order of time. */
  List<HeldReturn> returns() {
    return List.copyOf(returns.keySet());
  }

  Cue cueOf(HeldReturn held) {
    return Objects.requireNonNull(returns.get(held));
  }

  /** Whether a place means a return and nothing else. */
  boolean isAt(Place place, Cue cue) {
    List<Cue> found = places.resolve(place, NOWHERE);
    return found.size() == 1 && found.get(0).id().equals(cue.id());
  }

  /** The bar that a place means; "" where it means none, or several moments. */
  String barOf(Place place) {
    List<Cue> found = places.resolve(place, NOWHERE);
    return found.size() == 1 ? found.get(0).place().toString() : "";
  }

  /** The returns of a motif that count, those nearest to a moment first. */
  List<Cue> nearest(String motif, BigFraction quarters) {
    List<Cue> sorted = new ArrayList<>(cues.counted(motif));
    sorted.sort(
        Comparator.comparing(cue -> quartersOf(cue.at()).subtract(quarters).abs().doubleValue()));
    return sorted;
  }

  /** The marks at a moment, give or take an ornament. */
  List<Cue> marksAt(BigFraction quarters) {
    BigFraction near = BigFraction.of(1, 8);
    return cues.marks().stream()
        .filter(mark -> quartersOf(mark.at()).subtract(quarters).abs().compareTo(near) < 0)
        .toList();
  }

  /** How many marks have a name. */
  long marksCalled(String name) {
    return cues.marks().stream().filter(mark -> OldMusic.isSame(mark.name(), name)).count();
  }

  /** How many times a printed bar number is played. */
  int timesPlayed(int bar) {
    return music.bars().numbered(bar).size();
  }

  private BigFraction quartersOf(Seconds at) {
    return music.tempo().tickAt(at).divide(music.score().ticksPerQuarter());
  }

  private Seconds secondsAt(BigFraction quarters) {
    return music.tempo().secondsAt(quarters.multiply(music.score().ticksPerQuarter()));
  }

  /** The timecode of a moment. */
  Timecode timecodeAt(BigFraction quarters) {
    return plan.film().timecode(clock.frameAt(secondsAt(quarters)));
  }

  /** How much of a unit lies between two moments. */
  BigFraction between(BigFraction from, BigFraction to, Length.Unit unit) {
    return ruler.between(secondsAt(from), secondsAt(to), unit);
  }
}

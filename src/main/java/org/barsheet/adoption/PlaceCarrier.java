package org.barsheet.adoption;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.cues.Cue;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.revision.Fate;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.Revision;

/** Finds for places of the plan the places that mean the same music in the new version. */
final class PlaceCarrier {

  private final OldMusic old;
  private final NewMusic now;
  private final boolean timecodes;
  private final BarCarrier bars;
  private final ReturnCarrier returns;
  private final IntoCarrier into;

  /**
   * Carries places from one version to another.
   *
   * @param timecodes whether timecodes follow the music too
   */
  PlaceCarrier(Plan plan, Revision revision, OldMusic old, NewMusic now, boolean timecodes) {
    this.old = old;
    this.now = now;
    this.timecodes = timecodes;
    this.bars = new BarCarrier(revision, old, now);
    this.returns = new ReturnCarrier(revision, old, now, bars);
    this.into = new IntoCarrier(plan, revision, old, now, bars);
  }

  Outcome carry(Place place) {
    if (place instanceof Place.OfMotif motif) {
      return returns.carry(motif);
    }
    if (place instanceof Place.AtBar bar) {
      return bars.carry(bar);
    }
    if (place instanceof Place.AtMark mark) {
      return mark(mark);
    }
    if (place instanceof Place.IntoPanel panel) {
      return into.carry(panel);
    }
    return place instanceof Place.AtTimecode at && timecodes
        ? timecode(at)
        : new Outcome.Found(place, false);
  }

  private Outcome mark(Place.AtMark mark) {
    Optional<BigFraction> was = old.markAt(mark.name());
    if (was.isEmpty()) {
      return new Outcome.Asked("the old score has no such mark, or more than one", List.of());
    }
    Fate<BigFraction> fate = bars.fateOf(was.get());
    if (fate instanceof Kept<BigFraction> kept) {
      return new Outcome.Found(markAt(mark, kept.now()), kept.changed());
    }
    Outcome.Asked asked = bars.asked("the music at " + mark, fate, old.notes().placeAt(was.get()));
    return now.marksCalled(mark.name()) == 1 ? asked.nearestFirst(mark.toString()) : asked;
  }

  /** The mark that stands there now, the one of the same name first; the bar where none does. */
  private Place markAt(Place.AtMark mark, BigFraction quarters) {
    List<Cue> there =
        now.marksAt(quarters).stream().filter(cue -> now.marksCalled(cue.name()) == 1).toList();
    boolean same = there.stream().anyMatch(cue -> OldMusic.isSame(cue.name(), mark.name()));
    if (same) {
      return mark;
    }
    return there.isEmpty() ? bars.placeAt(quarters) : new Place.AtMark(there.get(0).name());
  }

  private Outcome timecode(Place.AtTimecode at) {
    BigFraction was = old.quartersAt(old.frameOf(at.timecode()));
    Fate<BigFraction> fate = bars.fateOf(was);
    if (fate instanceof Kept<BigFraction> kept) {
      Place there = new Place.AtTimecode(now.timecodeAt(kept.now()));
      return new Outcome.Found(there, kept.changed());
    }
    return bars.asked("the music at " + at, fate, old.notes().placeAt(was));
  }
}

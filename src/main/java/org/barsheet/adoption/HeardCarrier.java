package org.barsheet.adoption;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.plan.MotifRequest.HeardAt;
import org.barsheet.plan.Place;
import org.barsheet.revision.BarNote;
import org.barsheet.revision.Fate;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.Revision;
import org.barsheet.revision.ScoreNotes;

/**
 * Carries the places motifs are heard at. A motif must keep its notes, or all of its returns would
 * be others: where its place is gone, or its part plays something else there, another return with
 * the same notes takes over, or another part that plays them.
 */
final class HeardCarrier {

  private final Revision revision;
  private final OldMusic old;
  private final BarCarrier bars;
  private final PartNotes parts;

  HeardCarrier(Revision revision, OldMusic old, NewMusic now) {
    this.revision = revision;
    this.old = old;
    this.bars = new BarCarrier(revision, old, now);
    this.parts = new PartNotes(revision.now());
  }

  /**
   * Where the same notes are heard now; nothing where they are nowhere.
   *
   * @param place what became of the place
   */
  Optional<HeardAt> carry(String motif, HeardAt heard, Outcome place) {
    Optional<BigFraction> was = quartersOf(heard.place());
    String part = old.partNow(heard.part(), revision);
    Optional<LaidCue> first = was.flatMap(from -> returnIn(motif, heard, from));
    if (first.isEmpty()) {
      return place instanceof Outcome.Found found
          ? Optional.of(new HeardAt(found.now(), heard.length(), part, heard.where()))
          : Optional.empty();
    }
    HeldReturn notes = first.get().held().orElseThrow();
    if (place instanceof Outcome.Found found
        && bars.fateOf(was.orElseThrow()) instanceof Kept<BigFraction> kept) {
      BigFraction later = kept.now().subtract(was.orElseThrow());
      Optional<String> player = parts.playing(moved(notes, later), part);
      if (player.isPresent()) {
        return Optional.of(new HeardAt(found.now(), heard.length(), player.get(), heard.where()));
      }
    }
    return elsewhere(heard, part, first.get(), was.orElseThrow());
  }

  private Optional<BigFraction> quartersOf(Place place) {
    if (place instanceof Place.AtBar bar) {
      return old.barBeat(bar).flatMap(revision.before()::quartersOf);
    }
    if (place instanceof Place.AtMark mark) {
      return old.markAt(mark.name());
    }
    return place instanceof Place.AtTimecode at
        ? Optional.of(old.quartersAt(old.frameOf(at.timecode())))
        : Optional.empty();
  }

  /**
   * The return that was heard there: the first that its part begins from there on, within a bar.
   */
  private Optional<LaidCue> returnIn(String motif, HeardAt heard, BigFraction from) {
    long start = from.multiply(ScoreNotes.UNITS).longValue();
    int bar =
        revision
            .before()
            .barOf(revision.before().placeAt(from).bar(), revision.before().placeAt(from).time())
            .orElse(0);
    long end = start + revision.before().bars().get(bar).length();
    return old.returns().stream()
        .filter(cue -> cue.name().equals(motif))
        .filter(cue -> playedBy(cue, heard.part()))
        .filter(cue -> begins(cue) >= start && begins(cue) < end)
        .findFirst();
  }

  private static boolean playedBy(LaidCue cue, String part) {
    return cue.held().orElseThrow().parts().stream().anyMatch(own -> OldMusic.isSame(own, part));
  }

  private static long begins(LaidCue cue) {
    List<BarNote> notes = cue.held().orElseThrow().notes();
    return notes.isEmpty() ? 0 : notes.get(0).at();
  }

  private static List<BarNote> moved(HeldReturn held, BigFraction quarters) {
    long later = Math.round(quarters.multiply(ScoreNotes.UNITS).doubleValue());
    return held.notes().stream().map(note -> new BarNote(note.at() + later, note.pitch())).toList();
  }

  /** Another return with the same notes, as far after its place as the first was. */
  private Optional<HeardAt> elsewhere(HeardAt heard, String part, LaidCue first, BigFraction was) {
    HeldReturn notes = first.held().orElseThrow();
    for (LaidCue cue : old.returns()) {
      BigFraction apart = BigFraction.of(begins(cue) - begins(first), ScoreNotes.UNITS);
      boolean same =
          cue.name().equals(first.name())
              && cue.held().orElseThrow().notes().equals(moved(notes, apart));
      Fate<BigFraction> fate = bars.fateOf(was.add(apart));
      if (same && fate instanceof Kept<BigFraction> kept) {
        Optional<String> player = parts.playing(moved(notes, kept.now().subtract(was)), part);
        if (player.isPresent()) {
          Place there = bars.placeAt(kept.now());
          return Optional.of(new HeardAt(there, heard.length(), player.get(), heard.where()));
        }
      }
    }
    return Optional.empty();
  }
}

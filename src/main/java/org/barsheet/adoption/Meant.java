package org.barsheet.adoption;

import java.util.List;
import java.util.Optional;
import org.barsheet.changes.LaidAsk;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidMusic;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;
import org.barsheet.revision.Revision;
import org.barsheet.revision.ScoreNotes;

/**
 * Places that still mean the music of a version before the one the sheets were made from last.
 *
 * @param asks those places
 * @param carrier takes them from that version to the new one
 */
record Meant(List<LaidAsk> asks, PlaceCarrier carrier) {

  static Meant of(Plan plan, LaidFilm film, LaidMusic meant, Music music, NewMusic now) {
    ScoreNotes notes = meant.notes().orElseThrow();
    Revision revision = Revision.between(notes, ScoreNotes.of(music));
    OldMusic old = new OldMusic(film, notes);
    return new Meant(meant.asks(), new PlaceCarrier(plan, revision, old, now, false));
  }

  /** What takes a place to the new version, where it goes back further than the last sheets. */
  static Optional<PlaceCarrier> carrier(List<Meant> all, Standing standing) {
    boolean byNotes =
        !(standing.place() instanceof Place.IntoPanel
            || standing.place() instanceof Place.AtTimecode);
    return all.stream()
        .filter(meant -> byNotes && meant.asks().stream().anyMatch(ask -> isOf(ask, standing)))
        .map(Meant::carrier)
        .findFirst();
  }

  private static boolean isOf(LaidAsk ask, Standing standing) {
    return standing.of().startsWith("panel " + ask.panel() + " ")
        && standing.place().toString().equals(ask.words());
  }
}

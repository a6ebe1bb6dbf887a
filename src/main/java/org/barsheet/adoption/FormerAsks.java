package org.barsheet.adoption;

import java.util.List;
import org.barsheet.changes.LaidAsk;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Place;

/**
 * What the plan asked for when its sheets were made. What it asks for in other words since, once it
 * was adopted, is asked of the new version and must not be carried again.
 *
 * @param asks of the sheets made last
 * @param rate of the film, for timecodes
 */
record FormerAsks(List<LaidAsk> asks, FrameRate rate) {

  FormerAsks {
    asks = List.copyOf(asks);
  }

  /** Whether a place is in other words than when the sheets were made. */
  boolean isReworded(Standing standing) {
    List<Place> former = former(standing);
    return !former.isEmpty() && !former.contains(standing.place());
  }

  /** Whether a place is where its former words lead to: somebody adopted the plan already. */
  boolean isCarried(Standing standing, PlaceCarrier carrier) {
    return isReworded(standing)
        && former(standing).stream()
            .map(carrier::carry)
            .anyMatch(
                outcome ->
                    outcome instanceof Outcome.Found found && found.now().equals(standing.place()));
  }

  /** The places of the same thing; a motif may be heard in several. */
  private List<Place> former(Standing standing) {
    return asks.stream()
        .filter(ask -> title(ask).equals(standing.of()))
        .map(ask -> Place.parse(ask.words(), rate))
        .toList();
  }

  /** What a {@link Standing} calls the same thing. */
  private static String title(LaidAsk ask) {
    return switch (ask.kind()) {
      case CUE -> "panel " + ask.panel() + " cue";
      case CUT -> "panel " + ask.panel() + " cut";
      case REVEAL -> "panel " + ask.panel() + " " + ask.of();
      case MOTIF -> "motif " + ask.of() + " heard-at";
      case PIN -> Standing.pin(Seconds.parse(ask.of()));
    };
  }
}

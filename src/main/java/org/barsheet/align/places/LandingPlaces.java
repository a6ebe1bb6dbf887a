package org.barsheet.align.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.MusicRuler;
import org.barsheet.cues.PlaceResolver;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place.IntoPanel;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.OnNotes;
import org.barsheet.plan.Reveal.OnPlace;

/** Where the reveals of one panel land. */
final class LandingPlaces {

  private final Panel panel;
  private final MusicRuler ruler;
  private final int lead;
  private final List<List<Kept.Run>> runs = new ArrayList<>();
  private final List<Optional<Seconds>> ownPlaces = new ArrayList<>();
  private final List<List<PhotographRun>> ways = new ArrayList<>();

  /** Finds the places that reveals name themselves; what cannot be found is noted as a problem. */
  LandingPlaces(Panel panel, String panelBefore, AlignerInput input) {
    this.panel = panel;
    this.ruler = input.ruler();
    this.lead = input.film().lead();
    for (Reveal reveal : panel.reveals()) {
      checkNotes(reveal, input.places());
      ownPlaces.add(ownPlace(reveal, panelBefore, input.places()));
      ways.add(PhotographRun.waysToShow(reveal));
      runs.add(input.kept().runsOf(panel, reveal));
    }
  }

  private Optional<Seconds> ownPlace(Reveal reveal, String panelBefore, PlaceResolver places) {
    if (!(reveal.landsOn() instanceof OnPlace on)) {
      return Optional.empty();
    }
    if (on.place() instanceof IntoPanel into) {
      if (!into.panel().equals(panel.name()) && !into.panel().equals(panelBefore)) {
        places.refuse(
            reveal.where(),
            "a reveal in panel " + panel.name() + " can't count into panel " + into.panel(),
            "count into panel " + panel.name() + " or into the panel before it, or name a bar");
      }
      return Optional.empty();
    }
    List<Cue> found = places.resolve(on.place(), reveal.where());
    if (found.size() > 1) {
      places.refuse(
          reveal.where(),
          "'" + on.place() + "' can be any of " + found.size() + " returns",
          "say which: " + found.get(0).title() + " to " + found.get(found.size() - 1).title());
    }
    return found.size() == 1 ? Optional.of(found.get(0).accentAt()) : Optional.empty();
  }

  /** What the rooms of the reveals depend on, beside the panel's cue and cuts. */
  List<Object> rules() {
    return List.of(panel.reveals().stream().map(Reveal::landsOn).toList(), ways);
  }

  /** Whether some reveal lands on the accent, or the notes, of the panel's cue. */
  boolean anyOnAccent() {
    return panel.reveals().stream().anyMatch(reveal -> !(reveal.landsOn() instanceof OnPlace));
  }

  /** Whether some reveal is measured from the start of another panel. */
  boolean anyInto(String other) {
    return panel.reveals().stream().anyMatch(reveal -> isInto(reveal, other));
  }

  private static boolean isInto(Reveal reveal, String other) {
    return reveal.landsOn() instanceof OnPlace on
        && on.place() instanceof IntoPanel into
        && into.panel().equals(other);
  }

  /** The rooms of the reveals that do not hang on where the panel's own shot begins. */
  List<RevealRoom> roomsBeforeCut(Cue cue, Optional<Seconds> cutBefore) {
    return rooms(cue, Optional.empty(), cutBefore);
  }

  /** The rooms of all reveals, in the plan's order. */
  List<RevealRoom> rooms(Cue cue, Seconds cutAt, Optional<Seconds> cutBefore) {
    return rooms(cue, Optional.of(cutAt), cutBefore);
  }

  private List<RevealRoom> rooms(Cue cue, Optional<Seconds> cutAt, Optional<Seconds> cutBefore) {
    List<RevealRoom> rooms = new ArrayList<>();
    for (int i = 0; i < panel.reveals().size(); i++) {
      Reveal reveal = panel.reveals().get(i);
      boolean own = isInto(reveal, panel.name());
      if (own && cutAt.isEmpty()) {
        continue;
      }
      Optional<Seconds> from = own ? cutAt : cutBefore;
      rooms.add(room(i, cue, from));
    }
    return rooms;
  }

  private RevealRoom room(int i, Cue cue, Optional<Seconds> from) {
    Reveal reveal = panel.reveals().get(i);
    long accent = accentFrame(reveal, ownPlaces.get(i), cue, from);
    RevealRoom room = RevealRoom.of(reveal, cue, accent, lead, ruler, ways.get(i));
    return room.keeping(runs.get(i));
  }

  private long accentFrame(
      Reveal reveal, Optional<Seconds> ownPlace, Cue cue, Optional<Seconds> from) {
    Seconds moment = moment(reveal, ownPlace, cue, from);
    return moment.equals(cue.accentAt()) ? cue.accentFrame() : ruler.frameAt(moment);
  }

  /** Whether its rooms are the same wherever the panel's own shot begins. */
  boolean anyIntoItself() {
    return anyInto(panel.name());
  }

  private Seconds moment(
      Reveal reveal, Optional<Seconds> ownPlace, Cue cue, Optional<Seconds> from) {
    if (reveal.landsOn() instanceof OnPlace on
        && on.place() instanceof IntoPanel into
        && from.isPresent()) {
      return ruler.advance(from.get(), into.offset().unit(), into.offset().most());
    }
    return ownPlace.orElse(cue.accentAt());
  }

  /** Whether some reveal is photographed or locked and the earlier sheet says on which frames. */
  boolean anyKept() {
    return runs.stream().anyMatch(kept -> !kept.isEmpty());
  }

  /**
   * Whether every photographed or locked reveal keeps its frames in rooms, given in the plan's
   * order.
   */
  boolean keeps(List<RevealRoom> rooms) {
    return !anyKept() || firstMoved(rooms).isEmpty();
  }

  /** The first photographed or locked reveal that would not keep its frames. */
  Optional<RevealRoom> firstMoved(List<RevealRoom> rooms) {
    return IntStream.range(0, rooms.size())
        .filter(i -> !runs.get(i).isEmpty() && !rooms.get(i).keeps(runs.get(i)))
        .mapToObj(rooms::get)
        .findFirst();
  }

  private void checkNotes(Reveal reveal, PlaceResolver places) {
    if (reveal.landsOn() instanceof OnNotes && panel.cue().motifName().isEmpty()) {
      places.refuse(
          reveal.where(),
          "lands-on: notes needs a motif, and panel " + panel.name() + " isn't on one",
          "give the panel a motif as its cue, or land on the accent");
    }
  }
}

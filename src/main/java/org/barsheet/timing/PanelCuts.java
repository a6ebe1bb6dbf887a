package org.barsheet.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Panel.AtPlace;
import org.barsheet.plan.Panel.AutoCut;
import org.barsheet.plan.Panel.Before;
import org.barsheet.plan.Panel.OnCue;
import org.barsheet.plan.Place.Anywhere;
import org.barsheet.plan.Place.IntoPanel;

/** Where one panel's shot can begin, for each moment it could sit on. */
final class PanelCuts {

  private static final Comparator<Candidate> IN_FILM =
      Comparator.comparingLong(Candidate::cut)
          .thenComparingLong(Candidate::cost)
          .thenComparing(candidate -> candidate.cue().at());

  /** A moment a shot can begin. */
  private record Cut(Seconds at, long frame) {}

  private final AlignerInput input;
  private final int index;
  private final Panel panel;
  private final LandingPlaces landings;
  private final PanelOrigins origins;
  private final Optional<FrameSpan> lock;
  private final List<Cue> cutPlaces;

  /** Resolves what the panel names; what cannot be found is noted as a problem. */
  PanelCuts(AlignerInput input, int index) {
    this.input = input;
    this.index = index;
    this.panel = input.panels().get(index);
    String before = index == 0 ? "" : input.panels().get(index - 1).name();
    this.landings = new LandingPlaces(panel, before, input);
    this.origins = new PanelOrigins(input, index, landings);
    this.lock = input.lockOf(panel);
    this.cutPlaces = cutPlaces(before);
  }

  private List<Cue> cutPlaces(String before) {
    if (!(panel.cut() instanceof AtPlace at)
        || (at.place() instanceof IntoPanel into && into.panel().equals(before))) {
      return List.of();
    }
    List<Cue> found = input.places().resolve(at.place(), panel.where());
    if (found.size() > 1) {
      String sentence =
          "the cut of panel " + panel.name() + " can be at any of " + found.size() + " returns";
      input.places().refuse(panel.where(), sentence, "say which one, or name a bar");
    }
    return found;
  }

  /** The cue asked for, where the plan leaves no choice. */
  List<Cue> asked() {
    return origins.asked();
  }

  /**
   * All places the panel can take, in order of cut, then cost.
   *
   * @param before the places of the panel before; none for the first panel
   */
  List<Candidate> after(List<Candidate> before) {
    List<Candidate> found = new ArrayList<>();
    for (Origin origin : origins.after(before)) {
      addCandidates(origin, found);
    }
    found.sort(IN_FILM);
    return List.copyOf(found);
  }

  private void addCandidates(Origin origin, List<Candidate> found) {
    if (index == 0) {
      found.add(candidate(origin, at(0), 0, 0));
    } else if (lock.isPresent()) {
      Cut held = at(lock.get().start());
      found.add(candidate(origin, held, held.frame, 0));
    } else if (panel.cut() instanceof AutoCut && !panel.reveals().isEmpty()) {
      addAutoCuts(origin, found);
    } else {
      Cut cut = plainCut(origin);
      found.add(candidate(origin, cut, cut.frame, 0));
    }
  }

  private Cut at(long frame) {
    return new Cut(input.ruler().momentOf(frame), frame);
  }

  private Cut plainCut(Origin origin) {
    Seconds moment = origin.cue().at();
    if (panel.cut() instanceof OnCue || panel.cut() instanceof AutoCut) {
      return new Cut(moment, origin.cue().frame());
    }
    if (panel.cut() instanceof Before before) {
      Length length = before.before();
      moment = input.ruler().advance(moment, length.unit(), length.most().negate());
    } else if (panel.cut() instanceof AtPlace at) {
      moment = placeOfCut(at, origin);
    }
    return new Cut(moment, input.clock().frameAt(moment));
  }

  private Seconds placeOfCut(AtPlace at, Origin origin) {
    if (at.place() instanceof IntoPanel into && origin.cutBefore().isPresent()) {
      Length offset = into.offset();
      return input.ruler().advance(origin.cutBefore().get(), offset.unit(), offset.most());
    }
    return cutPlaces.isEmpty() ? origin.cue().at() : cutPlaces.get(0).at();
  }

  /**
   * The cut on the latest felt beat that leaves room for every reveal and the closed hold, and the
   * later beats it may give way to while the reveals can still be shown at all.
   */
  private void addAutoCuts(Origin origin, List<Candidate> found) {
    List<RevealRoom> rooms = landings.roomsBeforeCut(origin.cue(), origin.cutBefore());
    long needed = rooms.stream().mapToLong(this::neededCut).min().orElse(origin.cue().frame());
    if (!landings.anyOnAccent()) {
      needed = Math.min(needed, origin.cue().frame());
    }
    long latest = rooms.stream().mapToLong(RevealRoom::latestCut).min().orElse(needed);
    Cut wanted = beatAtOrBefore(needed);
    boolean free = panel.cue() instanceof Anywhere && !landings.anyOnAccent();
    if (free && wanted.frame != origin.cue().frame()) {
      return;
    }
    found.add(candidate(origin, wanted, wanted.frame, 0));
    for (Beat beat : input.ruler().beatsBetween(wanted.frame + 1, free ? wanted.frame : latest)) {
      Cut late = new Cut(beat.at(), beat.frame());
      found.add(candidate(origin, late, wanted.frame, Costs.LATE_CUT));
    }
  }

  private long neededCut(RevealRoom room) {
    long sounding = room.accentFrame() - room.landsFrame();
    return room.firstFrame(room.ways().get(0)) + sounding - input.film().closedHold();
  }

  private Cut beatAtOrBefore(long frame) {
    return input
        .ruler()
        .latestBeatAtOrBefore(frame)
        .map(beat -> new Cut(beat.at(), beat.frame()))
        .orElseGet(() -> at(Math.max(0, frame)));
  }

  private Candidate candidate(Origin origin, Cut cut, long wantedCut, long cost) {
    List<RevealRoom> rooms = landings.rooms(origin.cue(), cut.at, origin.cutBefore());
    long anchor = landings.anyOnAccent() ? cut.frame : origin.cue().frame();
    Candidate.Kind kind =
        lock.isPresent() ? Candidate.Kind.LOCKED : index == 0 ? firstKind(origin) : origin.kind();
    return new Candidate(
        origin.cue(),
        cut.at,
        cut.frame,
        anchor,
        rooms,
        origin.cost() + cost,
        origin.afterCut(),
        kind,
        wantedCut);
  }

  private static Candidate.Kind firstKind(Origin origin) {
    return origin.kind().isFree() ? Candidate.Kind.FIRST : origin.kind();
  }
}

package org.barsheet.align.places;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barsheet.align.places.PanelOrigins.Origin;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBeat;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Panel.AtPlace;
import org.barsheet.plan.Panel.AutoCut;
import org.barsheet.plan.Panel.Before;
import org.barsheet.plan.Place.Anywhere;

/** Where one panel's shot can begin, for each moment it could sit on. */
public final class PanelCuts {

  private static final Comparator<Candidate> IN_FILM =
      Comparator.comparingLong(Candidate::cut)
          .thenComparingLong(Candidate::cost)
          .thenComparing(candidate -> candidate.cue().at())
          .thenComparing(candidate -> candidate.cue().id());

  private final AlignerInput input;
  private final int index;
  private final Panel panel;
  private final Optional<FrameSpan> lock;
  private final LandingPlaces landings;
  private final Optional<Cue> cutPlace;
  private final PanelOrigins origins;

  /**
   * Resolves what the panel names; what cannot be found is noted as a problem.
   *
   * @param panel the panel at that index, or one to try in its stead
   * @param lock frames its shot must keep
   */
  public PanelCuts(AlignerInput input, int index, Panel panel, Optional<FrameSpan> lock) {
    this.input = input;
    this.index = index;
    this.panel = panel;
    this.lock = lock;
    String before = index == 0 ? "" : input.panels().get(index - 1).name();
    this.landings = new LandingPlaces(panel, before, input);
    this.cutPlace =
        panel.cut() instanceof AtPlace at
            ? input.places().resolve(at.place(), panel.where()).stream().findFirst()
            : Optional.empty();
    this.origins = new PanelOrigins(input, index, panel, landings, cutPlace);
  }

  /** The cue asked for, where the plan leaves no choice. */
  public Optional<Cue> asked() {
    return origins.asked();
  }

  /** Whether its places depend on where the panel before begins. */
  public boolean hangsOnPanelBefore() {
    return origins.hangsOnPanelBefore();
  }

  /**
   * All places the panel can take, in order of cut, then cost.
   *
   * @param before the places of the panel before; none for the first panel
   */
  public List<Candidate> after(List<Candidate> before) {
    return after(before, CutWindow.ANY);
  }

  /**
   * Those places the panel can take that begin in a window.
   *
   * @param before the places of the panel before that matter
   */
  public List<Candidate> after(List<Candidate> before, CutWindow window) {
    List<Candidate> found = new ArrayList<>();
    if (isPlainlyFree()) {
      found.addAll(window.of(input.freePlaces()));
      origins.offTheBeats(before).forEach(origin -> addCandidates(origin, window, found));
    } else {
      origins.after(before).forEach(origin -> addCandidates(origin, window, found));
    }
    found.removeIf(candidate -> !landings.keeps(candidate.rooms()));
    found.sort(IN_FILM);
    return List.copyOf(found);
  }

  /** Whether its places are the same as those of every panel that {@link #asksAs asks the same}. */
  public boolean isPlain() {
    boolean fixed = lock.isPresent() || index == 0 || origins.hangsOnPanelBefore();
    return !fixed && !landings.anyKept() && (panel.reveals().isEmpty() || !origins.isFree());
  }

  /** What the places of a plain panel depend on. */
  public List<Object> asksAs() {
    return List.of(panel.cue(), panel.cut(), landings.rules());
  }

  /** Whether it has few places, whatever the panel before does. */
  public boolean isFixed() {
    return !origins.hangsOnPanelBefore() && (index == 0 || origins.asked().isPresent());
  }

  /** Whether it may begin on any beat, and else only where the panel before says. */
  public boolean isFree() {
    return isPlainlyFree();
  }

  /** Whether it may begin off the beat, where the panel before has what was asked for it. */
  public boolean followsOffTheBeat(boolean beforeOffTheBeat) {
    return origins.isFree() && origins.followsOffTheBeat(beforeOffTheBeat);
  }

  /** What a place of the panel costs at least by itself. */
  public long leastCost() {
    return origins.leastCost();
  }

  /**
   * A photographed reveal that would have to move wherever the panel may begin, as one place it may
   * take would have it.
   */
  public Optional<RevealRoom> movedReveal() {
    if (!landings.anyKept() || hangsOnPanelBefore()) {
      return Optional.empty();
    }
    List<Candidate> found = new ArrayList<>();
    origins.after(List.of()).forEach(origin -> addCandidates(origin, CutWindow.ANY, found));
    boolean stays = found.stream().anyMatch(place -> landings.keeps(place.rooms()));
    return stays
        ? Optional.empty()
        : found.stream().flatMap(c -> landings.firstMoved(c.rooms()).stream()).findFirst();
  }

  /** Whether the panel may begin on any beat, which is the same for all such panels. */
  private boolean isPlainlyFree() {
    boolean onCue = !(panel.cut() instanceof Before);
    return origins.isFree() && onCue && lock.isEmpty() && panel.reveals().isEmpty();
  }

  /** Places with one more, in order, unless it is there already. */
  public static List<Candidate> inFilm(List<Candidate> places, Candidate besides) {
    if (places.stream().anyMatch(place -> isSame(place, besides))) {
      return places;
    }
    List<Candidate> all = new ArrayList<>(places);
    all.add(besides);
    all.sort(IN_FILM);
    return List.copyOf(all);
  }

  private static boolean isSame(Candidate one, Candidate other) {
    return one.cut() == other.cut()
        && one.afterCut() == other.afterCut()
        && one.cue().id().equals(other.cue().id());
  }

  private void addCandidates(Origin origin, CutWindow window, List<Candidate> found) {
    if (index == 0) {
      found.add(candidate(origin, 0));
    } else if (lock.isPresent()) {
      addLocked(origin, lock.get(), window, found);
    } else if (panel.cut() instanceof AutoCut && !panel.reveals().isEmpty()) {
      addAutoCuts(origin, window, found);
    } else {
      Seconds moment = plainCut(origin.cue());
      long frame = moment.equals(origin.cue().at()) ? origin.cue().frame() : frameOf(moment);
      if (window.contains(frame)) {
        found.add(candidate(origin, moment, frame, frame, 0));
      }
    }
  }

  /** Where only some frames matter, places outside of the locked shot are left out. */
  private void addLocked(Origin origin, FrameSpan span, CutWindow window, List<Candidate> found) {
    boolean inside = landings.anyOnAccent() || span.contains(origin.cue().frame());
    if (inside || window.equals(CutWindow.ANY)) {
      found.add(candidate(origin, span.start()));
    }
  }

  private long frameOf(Seconds moment) {
    return input.clock().frameAt(moment);
  }

  private Seconds plainCut(Cue cue) {
    if (panel.cut() instanceof Before before) {
      Length length = before.before();
      return input.ruler().advance(cue.at(), length.unit(), length.most().negate());
    }
    return cutPlace.map(Cue::at).orElse(cue.at());
  }

  /**
   * The cut on the latest felt beat that leaves room for every reveal and the closed hold, and the
   * later beats it may give way to while the reveals can still be shown at all.
   */
  private void addAutoCuts(Origin origin, CutWindow window, List<Candidate> found) {
    List<RevealRoom> rooms = landings.roomsBeforeCut(origin.cue(), origin.cutBefore());
    long needed = rooms.stream().mapToLong(this::neededCut).min().orElse(origin.cue().frame());
    if (panel.cue() instanceof Anywhere) {
      // Its reveals land on places of their own: it begins where it sits, in time for them.
      long frame = origin.cue().frame();
      if (frame <= latestCut(rooms, needed) && window.contains(frame)) {
        found.add(candidate(origin, frame));
      }
      return;
    }
    needed = landings.anyOnAccent() ? needed : Math.min(needed, origin.cue().frame());
    long latest = latestCut(rooms, needed);
    if (Math.max(latest, Math.max(0, needed)) < window.first()) {
      return;
    }
    long wanted = beatAtOrBefore(needed);
    if (window.contains(wanted)) {
      found.add(candidate(origin, wanted));
    }
    CutWindow late = new CutWindow(wanted + 1, latest).and(window);
    for (FilmBeat beat : input.ruler().beatsBetween(late.first(), late.last())) {
      found.add(late(origin, wanted, beat.frame()));
    }
  }

  private static long latestCut(List<RevealRoom> rooms, long otherwise) {
    return rooms.stream().mapToLong(RevealRoom::latestCut).min().orElse(otherwise);
  }

  private long neededCut(RevealRoom room) {
    long lead = room.accentFrame() - room.landsFrame();
    return room.firstFrame(room.ways().get(0)) + lead - input.film().closedHold();
  }

  private long beatAtOrBefore(long frame) {
    return input
        .ruler()
        .latestBeatAtOrBefore(frame)
        .map(FilmBeat::frame)
        .orElse(Math.max(0, frame));
  }

  /**
   * Every frame an automatic cut may give way to, later than a place it wants.
   *
   * @param withReveals whether the reveals have to be shown; else the cue's first frame is the
   *     limit
   */
  public List<Candidate> laterThan(Candidate wanted, boolean withReveals) {
    boolean gives = panel.cut() instanceof AutoCut && lock.isEmpty() && index > 0;
    if (!gives || panel.reveals().isEmpty() || panel.cue() instanceof Anywhere) {
      return List.of();
    }
    Origin origin = Origin.again(wanted, input.ruler());
    List<RevealRoom> rooms = landings.roomsBeforeCut(wanted.cue(), origin.cutBefore());
    long last = latestCut(rooms, wanted.cut());
    last = withReveals ? last : Math.max(last, wanted.cue().frame());
    List<Candidate> later = new ArrayList<>();
    for (long cut = wanted.cut() + 1; cut <= last; cut++) {
      Seconds at = input.ruler().momentOf(cut);
      List<RevealRoom> here =
          landings.anyIntoItself() ? landings.rooms(wanted.cue(), at, origin.cutBefore()) : rooms;
      Candidate place = candidate(origin, at, cut, wanted.cut(), Costs.LATE_CUT, here);
      if (landings.keeps(place.rooms())) {
        later.add(place);
      }
    }
    return later;
  }

  private Candidate late(Origin origin, long wantedCut, long cut) {
    return candidate(origin, input.ruler().momentOf(cut), cut, wantedCut, Costs.LATE_CUT);
  }

  /** A panel that names no cue, put on any frame. */
  public Candidate freeAt(long frame) {
    Cue cue = input.cues().free(input.ruler().momentOf(frame));
    Origin origin = Origin.of(cue, Candidate.Kind.FREE_OFF_BEAT, Costs.FREE_OFF_BEAT);
    return candidate(origin, frame);
  }

  private Candidate candidate(Origin origin, long cut) {
    Seconds moment = cut == origin.cue().frame() ? origin.cue().at() : input.ruler().momentOf(cut);
    return candidate(origin, moment, cut, cut, 0);
  }

  private Candidate candidate(
      Origin origin, Seconds cutAt, long cut, long wantedCut, long lateCost) {
    List<RevealRoom> rooms = landings.rooms(origin.cue(), cutAt, origin.cutBefore());
    return candidate(origin, cutAt, cut, wantedCut, lateCost, rooms);
  }

  private Candidate candidate(
      Origin origin,
      Seconds cutAt,
      long cut,
      long wantedCut,
      long lateCost,
      List<RevealRoom> rooms) {
    return new Candidate(
        origin.cue(),
        cutAt,
        cut,
        landings.anyOnAccent() ? cut : origin.cue().frame(),
        rooms,
        origin.cost() + lateCost,
        origin.afterCut(),
        lock.isPresent() ? Candidate.Kind.LOCKED : origin.kind(),
        wantedCut,
        Set.of());
  }
}

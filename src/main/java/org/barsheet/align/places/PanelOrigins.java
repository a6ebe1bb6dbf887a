package org.barsheet.align.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.barsheet.align.places.Candidate.Kind;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.cues.MusicRuler;
import org.barsheet.plan.Length;
import org.barsheet.plan.Length.Unit;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place.Anywhere;
import org.barsheet.plan.Place.IntoPanel;
import org.barsheet.plan.Place.OfMotif;

/** The moments one panel could sit on. */
final class PanelOrigins {

  /**
   * A moment a panel could sit on, before its cut is known.
   *
   * @param cue the moment
   * @param kind why it could
   * @param cost what choosing it costs, in millionths
   * @param afterCut the frame the panel before has to begin on, or {@link Candidate#ANY}
   * @param cutBefore the exact moment of that frame, where there is one
   */
  record Origin(Cue cue, Kind kind, long cost, long afterCut, Optional<Seconds> cutBefore) {

    /** An origin that does not hang on the panel before. */
    static Origin of(Cue cue, Kind kind, long cost) {
      return new Origin(cue, kind, cost, Candidate.ANY, Optional.empty());
    }

    /** The origin that a candidate came from. */
    static Origin again(Candidate place, MusicRuler ruler) {
      Optional<Seconds> before =
          place.afterCut() == Candidate.ANY
              ? Optional.empty()
              : Optional.of(ruler.momentOf(place.afterCut()));
      long cost = place.isLate() ? place.cost() - Costs.LATE_CUT : place.cost();
      return new Origin(place.cue(), place.kind(), cost, place.afterCut(), before);
    }

    /** The same, to be taken only after a given start of the panel before. */
    Origin after(Candidate before) {
      return new Origin(cue, kind, cost, before.cut(), Optional.of(before.cutAt()));
    }
  }

  /** A chain of exact lengths is followed from so many places at most; beyond, beats serve. */
  private static final int MOST_EXACT = 64;

  private final AlignerInput input;
  private final int index;
  private final Panel panel;
  private final LandingPlaces landings;
  private final List<Cue> asked;

  /**
   * Resolves the panel's cue; what cannot be found is noted as a problem.
   *
   * @param cutPlace where its shot begins, if the plan says so: a panel without a cue sits there
   */
  PanelOrigins(
      AlignerInput input, int index, Panel panel, LandingPlaces landings, Optional<Cue> cutPlace) {
    this.input = input;
    this.index = index;
    this.panel = panel;
    this.landings = landings;
    boolean placed = !(panel.cue() instanceof Anywhere || panel.cue() instanceof IntoPanel);
    this.asked =
        placed
            ? input.places().resolve(panel.cue(), panel.where())
            : cutPlace.filter(place -> panel.cue() instanceof Anywhere).stream().toList();
    checkInto();
  }

  private void checkInto() {
    if (panel.cue() instanceof IntoPanel into && (index == 0 || !into.panel().equals(before()))) {
      String sentence = "panel " + into.panel() + " isn't the panel right before this one";
      String remedy = "count into the panel right before, or name a place in the music";
      input.places().refuse(panel.where(), sentence, remedy);
    }
  }

  private String before() {
    return input.panels().get(index - 1).name();
  }

  /** The cue asked for, where the plan leaves no choice. */
  Optional<Cue> asked() {
    return isChoice() ? Optional.empty() : asked.stream().findFirst();
  }

  private boolean isChoice() {
    return panel.cue() instanceof OfMotif motif && motif.isAny();
  }

  /** Whether its places depend on where the panel before begins. */
  boolean hangsOnPanelBefore() {
    return panel.cue() instanceof IntoPanel || (index > 0 && landings.anyInto(before()));
  }

  /** Every moment, given the places of the panel before (none for the first panel). */
  List<Origin> after(List<Candidate> before) {
    if (panel.cue() instanceof IntoPanel into) {
      return distinctCuts(before).stream().map(b -> into(b, into.offset())).toList();
    }
    boolean placed = !(panel.cue() instanceof Anywhere) || !asked.isEmpty();
    List<Origin> origins = placed ? placed() : free(before);
    if (!hangsOnPanelBefore()) {
      return origins;
    }
    List<Candidate> cuts = distinctCuts(before);
    return origins.stream().flatMap(o -> cuts.stream().map(o::after)).toList();
  }

  private Origin into(Candidate before, Length offset) {
    Seconds at = input.ruler().advance(before.cutAt(), offset.unit(), offset.most());
    Cue cue = input.cues().intoPanel(panel.name(), at);
    return Origin.of(cue, Kind.INTO_PANEL, 0).after(before);
  }

  private static List<Candidate> distinctCuts(List<Candidate> candidates) {
    TreeMap<Long, Candidate> byCut = new TreeMap<>();
    candidates.forEach(candidate -> byCut.putIfAbsent(candidate.cut(), candidate));
    return List.copyOf(byCut.values());
  }

  private List<Origin> placed() {
    if (!isChoice()) {
      return asked.stream().map(cue -> Origin.of(cue, Kind.ASKED, 0)).toList();
    }
    return asked.stream().map(cue -> Origin.of(cue, Kind.RETURN, returnCost(cue))).toList();
  }

  private static long returnCost(Cue cue) {
    double score = cue.occurrence().orElseThrow().score();
    return Costs.of(1 - score) + (Cues.isCertain(cue) ? 0 : Costs.LIKELY_RETURN);
  }

  /** Whether the panel may sit on any beat. */
  boolean isFree() {
    return panel.cue() instanceof Anywhere && asked.isEmpty() && index > 0;
  }

  private List<Origin> free(List<Candidate> before) {
    if (index == 0) {
      return List.of(Origin.of(input.cues().free(input.clock().scoreTime(0)), Kind.FIRST, 0));
    }
    List<Origin> origins = new ArrayList<>();
    for (Candidate place : input.freePlaces()) {
      origins.add(Origin.of(place.cue(), place.kind(), place.cost()));
    }
    origins.addAll(offTheBeats(before));
    return origins;
  }

  /** Where the panel before has what was asked for it, wherever the beats are. */
  List<Origin> offTheBeats(List<Candidate> before) {
    Optional<FrameSpan> lockBefore = input.lockOf(input.panels().get(index - 1));
    if (lockBefore.isEmpty()) {
      return afterLengthAsked(before);
    }
    Seconds end = input.ruler().momentOf(lockBefore.get().endExclusive());
    return List.of(Origin.of(input.cues().free(end), Kind.AFTER_LOCK, 0));
  }

  /**
   * Where the panel before would have exactly the beats, seconds or frames asked for it. Bars are
   * left to the bar lines.
   */
  private List<Origin> afterLengthAsked(List<Candidate> before) {
    if (!asksExactly(input.panels().get(index - 1))) {
      return List.of();
    }
    Length asked = input.panels().get(index - 1).length().orElseThrow();
    List<Origin> origins = new ArrayList<>();
    for (Candidate b : distinctCuts(before.stream().filter(c -> !c.kind().isFree()).toList())) {
      Seconds at = input.ruler().advance(b.cutAt(), asked.unit(), asked.most());
      if (origins.size() < MOST_EXACT && input.clock().frameAt(at) < input.filmFrames()) {
        origins.add(Origin.of(input.cues().free(at), Kind.LENGTH_ASKED, 0).after(b));
      }
    }
    return origins;
  }

  private static boolean asksExactly(Panel panel) {
    return panel.length().filter(l -> !l.isRange() && l.unit() != Unit.BARS).isPresent();
  }

  /** Whether the panel before may have it begin off the beat, if that can sit off the beat. */
  boolean followsOffTheBeat(boolean beforeOffTheBeat) {
    Panel panelBefore = input.panels().get(index - 1);
    return input.lockOf(panelBefore).isPresent() || (beforeOffTheBeat && asksExactly(panelBefore));
  }

  /** What a place costs at least by itself, lengths and late cuts left out. */
  long leastCost() {
    return isChoice() ? asked.stream().mapToLong(PanelOrigins::returnCost).min().orElse(0) : 0;
  }
}

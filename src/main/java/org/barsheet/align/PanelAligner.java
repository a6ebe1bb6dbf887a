package org.barsheet.align;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.barsheet.align.conflict.ConflictWords;
import org.barsheet.align.conflict.Conflicts;
import org.barsheet.align.conflict.Reach;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.CutWindow;
import org.barsheet.align.places.Kept;
import org.barsheet.align.places.LengthTable;
import org.barsheet.align.places.PanelCuts;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.input.Prose;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;

/**
 * Puts panels on cues: of all layouts that keep the hard rules the one that costs least, found
 * exactly.
 */
public final class PanelAligner {

  private final AlignerInput input;
  private final List<PanelCuts> panels;
  private final LengthTable lengths;

  /**
   * Resolves every place the panels name.
   *
   * @throws InputException with every place that cannot be found, and every cue asked for twice
   */
  public PanelAligner(AlignerInput input) {
    this.input = input;
    this.lengths = new LengthTable(input.ruler(), input.filmFrames());
    this.panels = IntStream.range(0, input.panels().size()).mapToObj(this::cutsOf).toList();
    refuseSharedCues();
    refuseLengthsPastTheFilm();
    refuseMovedReveals();
    if (!input.places().problems().isEmpty()) {
      throw new InputException(input.places().problems());
    }
  }

  private PanelCuts cutsOf(int p) {
    Panel panel = input.panels().get(p);
    return new PanelCuts(input, p, panel, input.lockOf(panel));
  }

  private void refuseSharedCues() {
    Map<String, Panel> holders = new LinkedHashMap<>();
    for (int p = 0; p < panels.size(); p++) {
      Panel panel = input.panels().get(p);
      if (panels.get(p).asked().isPresent()) {
        Cue cue = panels.get(p).asked().get();
        Panel holder = holders.putIfAbsent(cue.id(), panel);
        if (holder != null) {
          input
              .places()
              .refuse(
                  panel.where(),
                  "panels "
                      + holder.name()
                      + " and "
                      + panel.name()
                      + " both ask for "
                      + cue.title(),
                  "only one panel fits on a cue: give one of them another place, or none (the other: "
                      + holder.where().position()
                      + ")");
        }
      }
    }
  }

  private void refuseLengthsPastTheFilm() {
    Seconds start = input.clock().scoreTime(0);
    for (Panel panel : input.panels()) {
      if (panel.length().isPresent()) {
        Length length = panel.length().get();
        long end = input.ruler().frameAfter(start, length.unit(), length.least());
        if (end > input.filmFrames()) {
          String film = Prose.count(input.filmFrames(), "frame");
          input
              .places()
              .refuse(
                  panel.where(),
                  "panel "
                      + panel.name()
                      + " asks for "
                      + length
                      + ", which is longer than the whole film",
                  "ask for less; the film has " + film + " and ends in " + lastBar());
        }
      }
    }
  }

  private void refuseMovedReveals() {
    Map<Integer, RevealRoom> moved = new TreeMap<>();
    for (int p = 0; p < panels.size(); p++) {
      int panel = p;
      panels.get(p).movedReveal().ifPresent(room -> moved.put(panel, room));
    }
    Optional<Layout> free = moved.isEmpty() ? Optional.empty() : ifNothingWereKept();
    moved.forEach(
        (p, room) ->
            refuseMovedReveal(
                input.panels().get(p),
                free.map(layout -> layout.places().get(p)).flatMap(room::in).orElse(room)));
  }

  /** The film that the plan asks for, without the reveals that must keep their frames. */
  private Optional<Layout> ifNothingWereKept() {
    if (!input.places().problems().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new PanelAligner(input.keepingShots()).align().layout());
    } catch (InputException othersDoNotFit) {
      return Optional.empty();
    }
  }

  private void refuseMovedReveal(Panel panel, RevealRoom room) {
    Kept.Run run = input.kept().runsOf(panel, room.reveal()).get(0);
    String held = room.reveal().photographed() ? "photographed" : "locked";
    boolean elsewhere = run.landsFrame() != room.landsFrame();
    String sentence =
        room.reveal().opening()
            + " in panel "
            + panel.name()
            + (elsewhere
                ? " was "
                    + held
                    + " to land on frame "
                    + run.landsFrame()
                    + ", but would now land on frame "
                    + room.landsFrame()
                : " was " + held + " with different timing");
    String freed =
        room.reveal().photographed()
            ? "take its photographs again (" + room.reveal().taken().undone() + ")"
            : "unlock panel " + panel.name() + " (locked: no)";
    String remedy =
        elsewhere
            ? "put the panel where it lands on "
                + input.ruler().locateFrame(run.landsFrame() + input.film().lead())
            : "restore the reveal's settings";
    input.places().refuse(room.reveal().where(), sentence, freed + ", or " + remedy);
  }

  private String lastBar() {
    return input.ruler().locateFrame(input.filmFrames() - 1).toString().replaceAll(" beat.*", "");
  }

  /**
   * The cheapest layout.
   *
   * @throws InputException with every conflict, if the panels don't all fit
   */
  public Alignment align() {
    ExactSearch search = search();
    int[] best = search.table().bestLayout();
    return alignment(
        search, best, new Alternatives(input, search.stages(), search.table(), best).all());
  }

  /**
   * The cheapest layout and others, cheapest first, that each have an idea of their own.
   *
   * @throws InputException with every conflict, if the panels don't all fit
   */
  public List<Choice> best(int count) {
    ExactSearch search = search();
    List<int[]> choices = new DifferentLayouts(search.stages(), search.table()).first(count);
    return choices.stream().map(choice -> choice(search, choices.get(0), choice)).toList();
  }

  private Choice choice(ExactSearch search, int[] best, int[] choice) {
    List<Optional<Alternative>> none = Collections.nCopies(panels.size(), Optional.empty());
    return new Choice(
        alignment(search, choice, none),
        CostItem.mainReason(search.stages(), best, choice, input.filmFrames()));
  }

  /**
   * One of several whole layouts.
   *
   * @param alignment without alternatives
   * @param why what makes it dearer than the best, where it is
   */
  public record Choice(Alignment alignment, Optional<String> why) {}

  private Alignment alignment(
      ExactSearch search, int[] choice, List<Optional<Alternative>> alternatives) {
    long cost = search.table().costOf(choice);
    Layout layout = Layout.of(search.stages(), choice, cost, input.filmFrames());
    Reasons reasons = new Reasons(input, layout);
    return new Alignment(
        layout, IntStream.range(0, panels.size()).mapToObj(reasons::of).toList(), alternatives);
  }

  private ExactSearch search() {
    ExactSearch search = ExactSearch.of(places(List.of()), input);
    if (search.table().best() >= Costs.IMPOSSIBLE) {
      search = ExactSearch.of(places(reachable().onePath()), input);
    }
    if (search.table().best() >= Costs.IMPOSSIBLE) {
      throw new InputException(tooFewCues());
    }
    return search;
  }

  /** Every panel with the places it can take. */
  public List<Stage> stages() {
    return places(List.of()).within(Collections.nCopies(panels.size(), CutWindow.ANY));
  }

  /**
   * The places of every panel.
   *
   * @param besides one further place for each panel, or none at all
   */
  PlanPlaces places(List<Candidate> besides) {
    return new PlanPlaces(input, panels, lengths, besides);
  }

  /** Frames would do, but two panels would have to share a cue. */
  private Problem tooFewCues() {
    return Problem.ofFile(
        input.panels().get(0).where().file(),
        "there aren't enough returns of a motif for all the panels that ask for one",
        "give some of those panels another place, or none");
  }

  /**
   * The frames that panels can begin on if all hard rules are kept.
   *
   * @throws InputException with every conflict, if there are none
   */
  private Reach reachable() {
    Conflicts conflicts = new Conflicts(input, lengths);
    Reach reach = conflicts.reach(conflicts.wishes());
    if (!reach.isPossible()) {
      ConflictWords words = new ConflictWords(input, conflicts);
      throw new InputException(conflicts.all().stream().map(words::problem).toList());
    }
    return reach;
  }
}

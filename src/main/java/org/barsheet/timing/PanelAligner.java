package org.barsheet.timing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Panel;

/**
 * Puts panels on cues: of all answers that keep the hard rules the one that costs least, found
 * exactly.
 */
final class PanelAligner {

  private final AlignerInput input;
  private final List<PanelCuts> panels;

  /**
   * Resolves every place the panels name.
   *
   * @throws InputException with every place that cannot be found, and every cue asked for twice
   */
  PanelAligner(AlignerInput input) {
    this.input = input;
    this.panels =
        IntStream.range(0, input.panels().size()).mapToObj(p -> new PanelCuts(input, p)).toList();
    refuseSharedCues();
    if (!input.places().problems().isEmpty()) {
      throw new InputException(input.places().problems());
    }
  }

  private void refuseSharedCues() {
    Map<String, Panel> holders = new LinkedHashMap<>();
    for (int p = 0; p < panels.size(); p++) {
      Panel panel = input.panels().get(p);
      for (Cue cue : panels.get(p).asked()) {
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
                      + " both sit on "
                      + cue.title(),
                  "a cue holds one panel: give one of them another place, or none (the other: "
                      + holder.where().position()
                      + ")");
        }
      }
    }
  }

  /** The cheapest answer. */
  Alignment align() {
    List<Stage> stages = stages();
    AlignerTable table = new AlignerTable(stages, input.filmFrames());
    if (table.best() >= Costs.IMPOSSIBLE) {
      throw new InputException(
          Problem.ofFile(
              input.panels().get(0).where().file(),
              "the panels cannot all stand where the plan wants them",
              "give some of them more room"));
    }
    Answer answer = Answer.of(stages, table.bestAnswer(), table.best(), input.filmFrames());
    Reasons reasons = new Reasons(input, answer);
    return new Alignment(
        answer,
        IntStream.range(0, stages.size()).mapToObj(reasons::of).toList(),
        Collections.nCopies(stages.size(), Optional.empty()));
  }

  private List<Stage> stages() {
    LengthTable lengths = new LengthTable(input.ruler(), input.filmFrames());
    List<Stage> stages = new ArrayList<>();
    List<Candidate> before = List.of();
    for (int p = 0; p < panels.size(); p++) {
      Panel panel = input.panels().get(p);
      before = panels.get(p).after(before);
      stages.add(new Stage(panel, before, input.lockOf(panel), lengths, input.meanLength()));
    }
    return stages;
  }
}

package org.barsheet.timing;

import java.util.ArrayList;
import java.util.List;

/**
 * The aligner's table over the places that matter: those that some answer can take which costs at
 * most a little more than the best. What is left out is proved to be dearer, so the best answer and
 * the margins up to {@link Rivals#DEAREST} are exact.
 */
final class ExactSearch {

  /** Where no more steps than this are possible, all places are kept. */
  private static final long SMALL = 4_000_000;

  private final List<Stage> all;
  private final AlignerInput input;
  private List<Stage> stages;
  private AlignerTable table;

  ExactSearch(List<Stage> all, AlignerInput input) {
    this.all = all;
    this.input = input;
    if (steps(all) <= SMALL) {
      this.stages = all;
      this.table = new AlignerTable(all, input.filmFrames());
      return;
    }
    CostBounds bounds = new CostBounds(all, input.filmFrames(), input.meanLength(), rewards());
    double limit = bounds.whole() + 2 * Rivals.DEAREST;
    this.stages = within(bounds, limit);
    this.table = new AlignerTable(stages, input.filmFrames());
    while (table.best() + Rivals.DEAREST > limit && steps(stages) < steps(all)) {
      boolean found = table.best() < Costs.IMPOSSIBLE;
      limit = found ? table.best() + Rivals.DEAREST : 2 * limit + Rivals.DEAREST;
      this.stages = within(bounds, limit);
      this.table = new AlignerTable(stages, input.filmFrames());
    }
  }

  private static long steps(List<Stage> stages) {
    long steps = 0;
    for (int p = 1; p < stages.size(); p++) {
      steps += (long) stages.get(p - 1).size() * stages.get(p).size();
    }
    return steps;
  }

  /** Marks are cheaper than the bar lines that the bounds count with; each serves one panel. */
  private long rewards() {
    return input.cues().marks().size() * (Costs.FREE_ON_BAR - Costs.FREE_ON_MARK);
  }

  private List<Stage> within(CostBounds bounds, double limit) {
    List<Stage> kept = new ArrayList<>();
    for (int p = 0; p < all.size(); p++) {
      kept.add(all.get(p).only(bounds.within(p, limit)));
    }
    return kept;
  }

  /** Every panel with the places that matter. */
  List<Stage> stages() {
    return stages;
  }

  AlignerTable table() {
    return table;
  }
}

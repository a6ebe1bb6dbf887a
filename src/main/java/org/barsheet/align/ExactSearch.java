package org.barsheet.align;

import java.util.List;

/**
 * The aligner's table over the places that matter: those that some answer can take which costs at
 * most a little more than the best. What is left out is proved to be dearer, so the best answer and
 * the margins up to {@link Rivals#DEAREST} are exact.
 */
final class ExactSearch {

  /** Where no more steps than this are possible, all places are kept. */
  private static final long SMALL = 4_000_000;

  private List<Stage> stages;
  private AlignerTable table;

  ExactSearch(List<Stage> all, AlignerInput input) {
    if (!isLarge(all)) {
      this.stages = all;
      this.table = new AlignerTable(all, input.filmFrames());
      return;
    }
    FilmBounds bounds = new FilmBounds(all, input);
    double limit = bounds.whole() + 2 * Rivals.DEAREST;
    this.stages = bounds.within(limit);
    this.table = new AlignerTable(stages, input.filmFrames());
    while (table.best() + Rivals.DEAREST > limit && steps(stages) < steps(all)) {
      boolean found = table.best() < Costs.IMPOSSIBLE;
      limit = found ? table.best() + Rivals.DEAREST : 2 * limit + Rivals.DEAREST;
      this.stages = bounds.within(limit);
      this.table = new AlignerTable(stages, input.filmFrames());
    }
  }

  /** Whether there are so many places that it is worth leaving some out. */
  static boolean isLarge(List<Stage> stages) {
    return steps(stages) > SMALL;
  }

  private static long steps(List<Stage> stages) {
    long steps = 0;
    for (int p = 1; p < stages.size(); p++) {
      steps += (long) stages.get(p - 1).size() * stages.get(p).size();
    }
    return steps;
  }

  /** Every panel with the places that matter. */
  List<Stage> stages() {
    return stages;
  }

  AlignerTable table() {
    return table;
  }
}

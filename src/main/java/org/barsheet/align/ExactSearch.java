package org.barsheet.align;

import java.util.List;

/**
 * The aligner's table over the places that matter: those that some layout can take which costs at
 * most a little more than the best. What is left out is proved to be impossible or dearer, so the
 * best layout and the margins up to {@link Alternatives#DEAREST} are exact.
 */
final class ExactSearch {

  /** Where panels have no more places than this on average, those too dear are kept as well. */
  private static final long FEW = 1_000;

  /** How much worse than the most promising place others are looked at for a good layout. */
  private static final long SPREAD = Costs.ONE;

  private final List<Stage> stages;
  private final AlignerTable table;

  private ExactSearch(CostsToEnd toEnd) {
    this.stages = toEnd.steps().stages();
    this.table = new AlignerTable(toEnd, Alternatives.DEAREST);
  }

  /** The best of all layouts, found among as few places as can be. */
  static ExactSearch of(PlanPlaces places, AlignerInput input) {
    List<CutWindow> possible = PossibleCuts.of(places.terms(), input.filmFrames());
    if (!isLarge(possible, input)) {
      return new ExactSearch(CostsToEnd.ofAll(steps(places, possible, input)));
    }
    FilmBounds bounds = new FilmBounds(places.terms(), possible, input);
    long limit = (long) bounds.whole() + 2 * Alternatives.DEAREST;
    long good = Costs.IMPOSSIBLE;
    while (true) {
      List<CutWindow> windows = bounds.within((double) limit);
      Steps steps = steps(places, windows, input);
      good = Math.min(good, CostsToEnd.promising(SPREAD, limit, steps, bounds).best());
      boolean found = good < Costs.IMPOSSIBLE;
      long dearest = good + Alternatives.DEAREST;
      boolean all = windows.equals(possible);
      if (found && (all || dearest <= limit)) {
        return new ExactSearch(CostsToEnd.within(dearest, steps, bounds));
      }
      if (all) {
        return new ExactSearch(CostsToEnd.ofAll(steps));
      }
      limit = found ? dearest : 2 * limit + Alternatives.DEAREST;
    }
  }

  private static Steps steps(PlanPlaces places, List<CutWindow> windows, AlignerInput input) {
    return new Steps(places.within(windows), input.filmFrames());
  }

  /** Whether there are so many places that it is worth leaving out some that are too dear. */
  private static boolean isLarge(List<CutWindow> windows, AlignerInput input) {
    long places = 0;
    for (CutWindow window : windows) {
      places += window.of(input.freePlaces()).size();
    }
    return places > FEW * windows.size();
  }

  /** Every panel with the places that matter. */
  List<Stage> stages() {
    return stages;
  }

  AlignerTable table() {
    return table;
  }
}

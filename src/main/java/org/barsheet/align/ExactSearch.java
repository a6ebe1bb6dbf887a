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

  private final List<Stage> stages;
  private final AlignerTable table;

  private ExactSearch(List<Stage> stages, AlignerTable table) {
    this.stages = stages;
    this.table = table;
  }

  /** The best of all layouts, found among as few places as can be. */
  static ExactSearch of(PlanPlaces places, AlignerInput input) {
    List<CutWindow> possible = PossibleCuts.of(places.terms(), input.filmFrames());
    if (!isLarge(possible, input)) {
      return among(places, possible, input);
    }
    FilmBounds bounds = new FilmBounds(places.terms(), possible, input);
    double limit = bounds.whole() + 2 * Alternatives.DEAREST;
    List<CutWindow> windows = bounds.within(limit);
    ExactSearch search = among(places, windows, input);
    while (search.table.best() + Alternatives.DEAREST > limit && !windows.equals(possible)) {
      boolean found = search.table.best() < Costs.IMPOSSIBLE;
      limit = found ? search.table.best() + Alternatives.DEAREST : 2 * limit + Alternatives.DEAREST;
      windows = bounds.within(limit);
      search = among(places, windows, input);
    }
    return search;
  }

  private static ExactSearch among(PlanPlaces places, List<CutWindow> windows, AlignerInput input) {
    List<Stage> stages = places.within(windows);
    return new ExactSearch(
        stages, new AlignerTable(stages, input.filmFrames(), Alternatives.DEAREST));
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

package org.barsheet.align;

import java.util.List;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.CutWindow;

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
    List<CutWindow> possible = PanelTerms.possibleCuts(places.terms(), input.filmFrames());
    if (!isLarge(possible, input)) {
      return among(places.within(possible), input);
    }
    return nearGood(places, possible, input);
  }

  /** The same, with all that is known to be too dear left out. */
  static ExactSearch nearGood(PlanPlaces places, List<CutWindow> possible, AlignerInput input) {
    FilmBounds bounds = new FilmBounds(places.terms(), possible, input);
    double limit = bounds.whole() + 2 * Alternatives.DEAREST;
    long good = Costs.IMPOSSIBLE;
    while (true) {
      List<CutWindow> windows = bounds.within(limit);
      List<Stage> stages = places.within(windows);
      Steps steps = new Steps(stages, bounds.panels(), input.filmFrames());
      good = Math.min(good, CostsToEnd.promising(SPREAD, bounds.whole(), limit, steps).best());
      boolean found = good < Costs.IMPOSSIBLE;
      double dearest = (double) good + Alternatives.DEAREST;
      boolean all = windows.equals(possible);
      if (found && (all || dearest <= limit)) {
        return new ExactSearch(CostsToEnd.within(dearest, steps));
      }
      if (all) {
        return among(stages, input);
      }
      limit = found ? dearest : limit + 4 * (limit - bounds.whole());
    }
  }

  private static ExactSearch among(List<Stage> stages, AlignerInput input) {
    Steps steps = new Steps(stages, input.filmFrames());
    return new ExactSearch(CostsToEnd.within((double) Costs.IMPOSSIBLE, steps));
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

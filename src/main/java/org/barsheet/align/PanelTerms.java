package org.barsheet.align;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.CutWindow;
import org.barsheet.plan.Length;

/**
 * What bounds one panel's shot, whichever place it takes: no place is outside of them.
 *
 * @param cuts the frames it may begin on
 * @param leastFrames the fewest it can have
 * @param mostFrames the most it can have
 * @param weight how much its length counts
 * @param leastWanted the least length it may like best, in frames
 * @param mostWanted the greatest
 * @param leastChoice what a place costs at least by itself; marks, which few panels can share,
 *     count as bar lines
 */
record PanelTerms(
    CutWindow cuts,
    long leastFrames,
    long mostFrames,
    double weight,
    double leastWanted,
    double mostWanted,
    long leastChoice) {

  /** The terms of a panel whose places are known. */
  static PanelTerms of(PlaceCosts costs, Optional<Length> asked) {
    int size = costs.size();
    long least = Long.MAX_VALUE;
    for (int i = 0; i < size; i++) {
      if (costs.place(i).kind() != Candidate.Kind.FREE_ON_MARK) {
        least = Math.min(least, costs.place(i).cost());
      }
    }
    return new PanelTerms(
        size == 0 ? new CutWindow(0, -1) : new CutWindow(costs.cut(0), costs.cut(size - 1)),
        costs.leastFrames(),
        costs.mostFrames(),
        PlaceCosts.weight(asked),
        costs.leastWanted(),
        costs.mostWanted(),
        least == Long.MAX_VALUE ? 0 : least);
  }

  /** The same with one more place. */
  PanelTerms or(PanelTerms other) {
    return new PanelTerms(
        new CutWindow(
            Math.min(cuts.first(), other.cuts.first()), Math.max(cuts.last(), other.cuts.last())),
        Math.min(leastFrames, other.leastFrames),
        Math.max(mostFrames, other.mostFrames),
        weight,
        Math.min(leastWanted, other.leastWanted),
        Math.max(mostWanted, other.mostWanted),
        Math.min(leastChoice, other.leastChoice));
  }

  /**
   * The least that the shot, its choice and its length, costs if each frame of it earns a price.
   *
   * @param price in millionths a frame, of any sign
   */
  double leastAtPrice(double price, long filmFrames) {
    double scale = weight * Costs.ONE;
    double wish = price > 0 ? mostWanted : leastWanted;
    double slope = 1 - price * wish / scale;
    double frames = slope <= 0 ? filmFrames : wish / Math.sqrt(slope);
    double most = (double) Math.min(mostFrames, filmFrames);
    frames = Math.max((double) leastFrames, Math.min(most, frames));
    double nearest = Math.max(leastWanted, Math.min(mostWanted, frames));
    return leastChoice + Costs.length(weight, frames, nearest) - price * frames - 1;
  }

  /**
   * The frames panels may begin on, since those before and after them need room as well: one window
   * a panel; no layout has a panel begin outside of it.
   */
  static List<CutWindow> possibleCuts(List<PanelTerms> terms, long filmFrames) {
    CutWindow[] cuts = terms.stream().map(PanelTerms::cuts).toArray(CutWindow[]::new);
    for (int p = 1; p < cuts.length; p++) {
      PanelTerms before = terms.get(p - 1);
      cuts[p] = cuts[p].and(after(cuts[p - 1], before.leastFrames(), before.mostFrames()));
    }
    CutWindow end = new CutWindow(filmFrames, filmFrames);
    for (int p = cuts.length - 1; p >= 0; p--) {
      PanelTerms here = terms.get(p);
      CutWindow next = p + 1 == cuts.length ? end : cuts[p + 1];
      cuts[p] = cuts[p].and(after(next, -here.mostFrames(), -here.leastFrames()));
    }
    return Arrays.asList(cuts);
  }

  private static CutWindow after(CutWindow cuts, long least, long most) {
    return new CutWindow(cuts.first() + least, cuts.last() + most);
  }
}

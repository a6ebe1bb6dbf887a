package org.barsheet.align;

import java.util.Arrays;
import java.util.List;

/** The frames panels may begin on, since those before and after them need room as well. */
final class PossibleCuts {

  private PossibleCuts() {}

  /** One window a panel; no layout has a panel begin outside of it. */
  static List<CutWindow> of(List<PanelTerms> terms, long filmFrames) {
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

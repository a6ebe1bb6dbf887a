package org.barsheet.align;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.cues.Cue;

/**
 * What the film costs at least, wherever a panel begins. Panels that can begin on few frames only
 * part the film into stretches that have nearly nothing to do with one another.
 */
final class FilmBounds {

  private final List<PanelTerms> terms;
  private final List<CutWindow> cuts;
  private final AlignerInput input;
  private final long[] marks;
  private final List<CostBounds> stretches = new ArrayList<>();
  private final int[] stretchOf;
  private final int[] firstOf;

  /**
   * Bounds of a film.
   *
   * @param cuts the frames each panel may begin on whatever it costs
   */
  FilmBounds(List<PanelTerms> terms, List<CutWindow> cuts, AlignerInput input) {
    this.terms = terms;
    this.cuts = cuts;
    this.input = input;
    this.marks = input.cues().marks().stream().mapToLong(Cue::frame).toArray();
    this.stretchOf = new int[terms.size()];
    this.firstOf = new int[terms.size()];
    int first = 0;
    for (int p = 1; p <= terms.size(); p++) {
      if (p == terms.size() || isNarrow(cuts.get(p))) {
        addStretch(first, p);
        first = p;
      }
    }
  }

  private boolean isNarrow(CutWindow window) {
    return (double) (window.last() - window.first()) <= input.meanLength();
  }

  private void addStretch(int first, int end) {
    CutWindow starts = cuts.get(first);
    long film = input.filmFrames();
    CutWindow ends = end == terms.size() ? new CutWindow(film, film) : cuts.get(end);
    for (int p = first; p < end; p++) {
      stretchOf[p] = stretches.size();
      firstOf[p] = first;
    }
    stretches.add(
        new CostBounds(
            terms.subList(first, end), starts, ends, input.meanLength(), rewards(starts, ends)));
  }

  /** Marks are cheaper than the bar lines that the bounds count with; each serves one panel. */
  private long rewards(CutWindow starts, CutWindow ends) {
    long within = 0;
    for (long mark : marks) {
      within += mark >= starts.first() && mark < ends.last() ? 1 : 0;
    }
    return within * (Costs.FREE_ON_BAR - Costs.FREE_ON_MARK);
  }

  /** What the whole film costs at least. */
  double whole() {
    return stretches.stream().mapToDouble(CostBounds::whole).sum();
  }

  /** The frames each panel may begin on in a layout that costs no more than a limit. */
  List<CutWindow> within(double limit) {
    double slack = limit - whole();
    List<CutWindow> kept = new ArrayList<>();
    for (int p = 0; p < terms.size(); p++) {
      CostBounds stretch = stretches.get(stretchOf[p]);
      kept.add(stretch.within(p - firstOf[p], cuts.get(p), stretch.whole() + slack));
    }
    return kept;
  }
}

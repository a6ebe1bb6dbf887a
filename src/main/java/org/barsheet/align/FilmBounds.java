package org.barsheet.align;

import java.util.ArrayList;
import java.util.List;

/**
 * What the film costs at least, whichever place a panel takes. Panels that can begin on one frame
 * only part the film into stretches that have nothing to do with one another.
 */
final class FilmBounds {

  private final List<Stage> stages;
  private final List<CostBounds> stretches = new ArrayList<>();
  private final int[] stretchOf;
  private final int[] firstOf;

  FilmBounds(List<Stage> stages, AlignerInput input) {
    this.stages = stages;
    this.stretchOf = new int[stages.size()];
    this.firstOf = new int[stages.size()];
    int first = 0;
    for (int p = 1; p <= stages.size(); p++) {
      if (p == stages.size() || stages.get(p).hasOneCut()) {
        addStretch(first, p, input);
        first = p;
      }
    }
  }

  private void addStretch(int first, int end, AlignerInput input) {
    long start = stages.get(first).cut(0);
    long stop = end == stages.size() ? input.filmFrames() : stages.get(end).cut(0);
    for (int p = first; p < end; p++) {
      stretchOf[p] = stretches.size();
      firstOf[p] = first;
    }
    // Marks are cheaper than the bar lines that the bounds count with; each serves one panel.
    long marks =
        input.cues().marks().stream()
            .filter(mark -> mark.frame() >= start && mark.frame() < stop)
            .count();
    long rewards = marks * (Costs.FREE_ON_BAR - Costs.FREE_ON_MARK);
    stretches.add(
        new CostBounds(stages.subList(first, end), start, stop, input.meanLength(), rewards));
  }

  /** What the whole film costs at least. */
  double whole() {
    return stretches.stream().mapToDouble(CostBounds::whole).sum();
  }

  /** Every panel with the places that an answer that costs no more than a limit may take. */
  List<Stage> within(double limit) {
    double slack = limit - whole();
    List<Stage> kept = new ArrayList<>();
    for (int p = 0; p < stages.size(); p++) {
      CostBounds stretch = stretches.get(stretchOf[p]);
      kept.add(stages.get(p).only(stretch.within(p - firstOf[p], stretch.whole() + slack)));
    }
    return kept;
  }
}

package org.barsheet.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.barsheet.cues.Cue;

/**
 * What the film costs at least, wherever a panel begins. Panels that can begin on few frames only
 * part the film into stretches that have nearly nothing to do with one another.
 */
final class FilmBounds {

  private static final double REWARD = Costs.FREE_ON_BAR - Costs.FREE_ON_MARK;

  private final List<PanelTerms> terms;
  private final List<CutWindow> cuts;
  private final AlignerInput input;
  private final long[] marks;
  private final List<CostBounds> stretches = new ArrayList<>();
  private final List<CutWindow> startsOf = new ArrayList<>();
  private final List<CutWindow> endsOf = new ArrayList<>();
  private final List<Double> wholeBefore = new ArrayList<>(List.of(0.0));
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
    this.marks = input.cues().marks().stream().mapToLong(Cue::frame).sorted().toArray();
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
    CostBounds stretch =
        new CostBounds(terms.subList(first, end), starts, ends, input.meanLength());
    double least = stretch.whole() - rewards(starts.first(), ends.last());
    stretches.add(stretch);
    startsOf.add(starts);
    endsOf.add(ends);
    wholeBefore.add(wholeBefore.get(wholeBefore.size() - 1) + least);
  }

  /** Marks are cheaper than the bar lines that the bounds count with; each serves one panel. */
  private double rewards(long from, long to) {
    return REWARD * Math.max(0, marksBefore(to) - marksBefore(from));
  }

  private int marksBefore(long frame) {
    int at = Arrays.binarySearch(marks, frame);
    while (at > 0 && marks[at - 1] == frame) {
      at--;
    }
    return at < 0 ? -at - 1 : at;
  }

  /** What the whole film costs at least. */
  double whole() {
    return wholeBefore.get(stretches.size());
  }

  /** What the panels before one cost at least if that one begins on a frame. */
  double before(int p, long cut) {
    int stretch = stretchOf[p];
    return wholeBefore.get(stretch)
        + stretches.get(stretch).before(p - firstOf[p], cut)
        - rewards(startsOf.get(stretch).first(), cut);
  }

  /** What a panel and those after it cost at least if it begins on a frame. */
  double from(int p, long cut) {
    int stretch = stretchOf[p];
    return whole()
        - wholeBefore.get(stretch + 1)
        + stretches.get(stretch).from(p - firstOf[p], cut)
        - rewards(cut, endsOf.get(stretch).last());
  }

  /** The frames each panel may begin on in a layout that costs no more than a limit. */
  List<CutWindow> within(double limit) {
    return IntStream.range(0, terms.size()).mapToObj(p -> within(p, limit)).toList();
  }

  /** The frames a panel may begin on in a layout that costs no more than a limit. */
  CutWindow within(int p, double limit) {
    CostBounds stretch = stretches.get(stretchOf[p]);
    return stretch.within(p - firstOf[p], cuts.get(p), stretch.whole() + limit - whole());
  }
}

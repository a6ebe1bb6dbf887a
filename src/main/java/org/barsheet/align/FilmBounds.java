package org.barsheet.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.CutWindow;
import org.barsheet.cues.Cue;

/**
 * What the film costs at least, wherever a panel begins. Panels that can begin on few frames only
 * part the film into stretches that have nearly nothing to do with one another.
 */
final class FilmBounds {

  /** Marks are cheaper than the bar lines that the bounds count with; each serves one panel. */
  private static final double REWARD = Costs.FREE_ON_BAR - Costs.FREE_ON_MARK;

  private final List<PanelTerms> terms;
  private final List<CutWindow> cuts;
  private final AlignerInput input;
  private final long[] marks;
  private final List<PanelBounds> panels = new ArrayList<>();
  private double whole;

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
    CostBounds stretch =
        new CostBounds(terms.subList(first, end), starts, ends, input.meanLength());
    for (int p = first; p < end; p++) {
      panels.add(new InStretch(stretch, p - first, cuts.get(p), starts.first(), ends.last()));
    }
    int marksBetween = Math.max(0, marksBefore(ends.last()) - marksBefore(starts.first()));
    whole += stretch.whole() - REWARD * marksBetween;
  }

  private int marksBefore(long frame) {
    return (int) Arrays.stream(marks).filter(mark -> mark < frame).count();
  }

  /** What the whole film costs at least. */
  double whole() {
    return whole;
  }

  /** The bounds of every panel. */
  List<PanelBounds> panels() {
    return List.copyOf(panels);
  }

  /** The frames each panel may begin on in a layout that costs no more than a limit. */
  List<CutWindow> within(double limit) {
    return panels.stream().map(panel -> panel.within(limit)).toList();
  }

  /** A panel in its stretch, together with the stretches before and after. */
  private final class InStretch implements PanelBounds {

    private final CostBounds stretch;
    private final int index;
    private final CutWindow window;
    private final double wholeBefore;
    private final int marksBefore;
    private final int marksTo;
    private int passed;

    InStretch(CostBounds stretch, int index, CutWindow window, long start, long end) {
      this.stretch = stretch;
      this.index = index;
      this.window = window;
      this.wholeBefore = whole;
      this.marksBefore = marksBefore(start);
      this.marksTo = marksBefore(end);
      this.passed = marksBefore;
    }

    @Override
    public double before(long cut) {
      return wholeBefore + stretch.before(index, cut) - REWARD * (passed(cut) - marksBefore);
    }

    @Override
    public double from(long cut) {
      double after = whole - wholeBefore - stretch.whole() + REWARD * (marksTo - marksBefore);
      return after + stretch.from(index, cut) - REWARD * (marksTo - passed(cut));
    }

    /** Marks before a frame: from one frame asked about to the next it is not far. */
    private int passed(long frame) {
      while (passed < marks.length && marks[passed] < frame) {
        passed++;
      }
      while (passed > 0 && marks[passed - 1] >= frame) {
        passed--;
      }
      return passed;
    }

    @Override
    public CutWindow within(double limit) {
      return stretch.within(index, window, stretch.whole() + limit - whole);
    }
  }
}

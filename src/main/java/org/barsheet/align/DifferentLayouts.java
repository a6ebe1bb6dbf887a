package org.barsheet.align;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barsheet.align.places.Candidate;

/**
 * The best whole layout and others that each have an idea of their own, cheapest first. An idea is
 * another return for a panel that sits on one of several, or another place for panels in a row that
 * name none.
 */
final class DifferentLayouts {

  /**
   * What makes a layout another one.
   *
   * @param panel the panel, or the first one of its row
   * @param cue the return it sits on, or ""
   */
  record Idea(int panel, String cue) {}

  /** Where an idea costs least. */
  private record Through(int panel, int place, long cost) {}

  private final List<Stage> stages;
  private final AlignerTable table;
  private final int[] best;
  private final int[] firstOfRow;

  DifferentLayouts(List<Stage> stages, AlignerTable table) {
    this.stages = stages;
    this.table = table;
    this.best = table.bestLayout();
    this.firstOfRow = new int[best.length];
    for (int p = 1; p < best.length; p++) {
      firstOfRow[p] = place(p - 1, best[p - 1]).kind().isFree() ? firstOfRow[p - 1] : p;
    }
  }

  /** At most so many layouts, each a place for every panel. */
  List<int[]> first(int count) {
    List<int[]> found = new ArrayList<>(List.of(best));
    Set<Idea> had = new HashSet<>();
    for (Through through : cheapest()) {
      if (found.size() < count && !had.contains(idea(through.panel(), through.place()))) {
        int[] layout = table.layoutThrough(through.panel(), through.place(), best);
        found.add(layout);
        for (int p = 0; p < layout.length; p++) {
          if (isOther(p, layout[p])) {
            had.add(idea(p, layout[p]));
          }
        }
      }
    }
    return found;
  }

  /** Where each idea costs least, the cheapest first; of equal ones the first panel's. */
  private List<Through> cheapest() {
    Map<Idea, Through> cheapest = new HashMap<>();
    for (int p = 0; p < stages.size(); p++) {
      Row near = table.near(p);
      for (int i = near.from(); i < near.to(); i++) {
        long cost = table.bestThrough(p, i);
        if (cost - table.best() <= Alternatives.DEAREST && isOther(p, i)) {
          Through here = new Through(p, i, cost);
          cheapest.merge(idea(p, i), here, (one, two) -> two.cost() < one.cost() ? two : one);
        }
      }
    }
    return cheapest.values().stream()
        .sorted(
            Comparator.comparingLong(Through::cost)
                .thenComparingInt(Through::panel)
                .thenComparingInt(Through::place))
        .toList();
  }

  /** Whether a place is on another cue than the best layout's. */
  boolean isOther(int p, int i) {
    return i != best[p] && Alternatives.isOther(place(p, i), place(p, best[p]));
  }

  private Candidate place(int p, int i) {
    return stages.get(p).candidate(i);
  }

  /** The idea of a panel at a place that is not the best layout's. */
  Idea idea(int p, int i) {
    Candidate place = place(p, i);
    if (place.kind() == Candidate.Kind.RETURN) {
      return new Idea(p, place.cue().id());
    }
    return new Idea(firstOfRow[p], "");
  }
}

package org.barsheet.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * The best few whole layouts, cheapest first, of equal ones the one with the earlier cuts. Because
 * the cheapest way on from every place is known exactly, the search for them never goes astray (A*
 * with a perfect estimate: Hart, Nilsson and Raphael 1968).
 */
public final class BestLayouts {

  /**
   * The beginning of a layout.
   *
   * @param before all but its last panel
   * @param panel index of its last panel
   * @param place that panel's place
   * @param sofar what the shots before its last panel cost
   * @param least what a whole layout that begins so costs at least
   */
  private record Beginning(
      @Nullable Beginning before, int panel, int place, long sofar, long least) {

    int[] places() {
      int[] places = new int[panel + 1];
      for (Beginning at = this; at != null; at = at.before) {
        places[at.panel] = at.place;
      }
      return places;
    }
  }

  private final List<Stage> stages;
  private final AlignerTable table;

  public BestLayouts(List<Stage> stages, AlignerTable table) {
    this.stages = stages;
    this.table = table;
  }

  /** At most so many layouts, each a place for every panel. */
  public List<int[]> first(int count) {
    PriorityQueue<Beginning> open =
        new PriorityQueue<>(
            Comparator.comparingLong(Beginning::least).thenComparing(this::compareCuts));
    for (int i = 0; i < stages.get(0).size(); i++) {
      add(open, new Beginning(null, 0, i, 0, table.toEnd(0, i)));
    }
    List<int[]> found = new ArrayList<>();
    while (found.size() < count && !open.isEmpty()) {
      Beginning best = open.poll();
      if (best.panel() + 1 == stages.size()) {
        found.add(best.places());
      } else {
        extend(open, best);
      }
    }
    return found;
  }

  private static void add(PriorityQueue<Beginning> open, Beginning beginning) {
    if (beginning.least() < Costs.IMPOSSIBLE) {
      open.add(beginning);
    }
  }

  private void extend(PriorityQueue<Beginning> open, Beginning from) {
    int p = from.panel();
    Stage here = stages.get(p);
    Stage next = stages.get(p + 1);
    for (int j = next.firstFrom(here.earliestEnd(from.place())); j < next.size(); j++) {
      long step = table.step(p, from.place(), j);
      if (step < Costs.IMPOSSIBLE) {
        long sofar = from.sofar() + here.choiceCost(from.place()) + step;
        long least = Math.min(Costs.IMPOSSIBLE, sofar + table.toEnd(p + 1, j));
        add(open, new Beginning(from, p + 1, j, sofar, least));
      }
    }
  }

  /** Earlier cuts first; the longer beginning first where one begins the other. */
  private int compareCuts(Beginning one, Beginning other) {
    int[] left = one.places();
    int[] right = other.places();
    for (int p = 0; p < Math.min(left.length, right.length); p++) {
      int byCut = Long.compare(stages.get(p).cut(left[p]), stages.get(p).cut(right[p]));
      if (byCut != 0) {
        return byCut;
      }
    }
    int byLength = Integer.compare(right.length, left.length);
    return byLength != 0 ? byLength : Arrays.compare(left, right);
  }
}

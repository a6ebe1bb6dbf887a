package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barsheet.exposure.Movement;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Field;
import org.barsheet.plan.Opening;

/**
 * A movement as work to do: what it is taken on, what panels show of it, and how far the other
 * openings that can be seen stand open meanwhile.
 *
 * @param movement what is photographed
 * @param model what it is photographed on
 * @param opening the opening it is first shown for
 * @param flap what moves on the model
 * @param panels panels that show it, in story order
 * @param fields what those panels see, where they say so, as if all of them showed that opening
 * @param standing openings that are seen and do not move, in the plan's order
 */
record MovementWork(
    Movement movement,
    Artwork.Model model,
    Opening opening,
    String flap,
    List<String> panels,
    List<Field> fields,
    List<Setup.Standing> standing) {

  MovementWork {
    panels = List.copyOf(panels);
    fields = List.copyOf(fields);
    standing = List.copyOf(standing);
  }

  /** {@code [i][j]}: whether i may be taken before j on one piece of paper, for all of a model. */
  static boolean[][] mayPrecede(List<MovementWork> works) {
    boolean[][] may = new boolean[works.size()][works.size()];
    for (int i = 0; i < may.length; i++) {
      for (int j = 0; j < may.length; j++) {
        may[i][j] = i != j && works.get(i).leavesRoomFor(works.get(j));
      }
    }
    return may;
  }

  /** Whether nothing stands further open after this work than the other wants it. */
  private boolean leavesRoomFor(MovementWork other) {
    return openTooFarFor(other).isEmpty();
  }

  /** Openings that stand further open after this work than the other wants them. */
  List<String> openTooFarFor(MovementWork other) {
    Map<String, Double> wanted = other.openWhile();
    wanted.put(other.flap, 0.0);
    List<String> tooFar = new ArrayList<>();
    for (Map.Entry<String, Double> left : leftOpen().entrySet()) {
      if (left.getValue() > wanted.getOrDefault(left.getKey(), 1.0)) {
        tooFar.add(left.getKey().equals(flap) ? opening.name() : left.getKey());
      }
    }
    return tooFar;
  }

  private Map<String, Double> leftOpen() {
    Map<String, Double> left = openWhile();
    left.put(flap, 1.0);
    return left;
  }

  private Map<String, Double> openWhile() {
    Map<String, Double> open = new TreeMap<>();
    standing.forEach(one -> open.put(one.opening(), one.open()));
    return open;
  }
}

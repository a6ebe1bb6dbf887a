package org.barsheet.handoff;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.drawing.PixelRect;

/**
 * Which part of the frame the placeholders of each movement are drawn in, so that all layers of a
 * frame can be seen together. A photograph is one file, whichever layers show it, so its part
 * cannot follow the layer: movements that are ever seen together have parts of their own, and where
 * two layers show one movement at once each of its photographs has a place of its own within the
 * part.
 */
final class PhotographParts {

  private final Map<String, Integer> parts = new LinkedHashMap<>();
  private final Set<String> onTwoLayers = new HashSet<>();
  private final int count;

  /** Gives each movement, in story order, the first part that none seen with it has. */
  PhotographParts(FilmSheet sheet) {
    Map<String, Set<String>> together = together(sheet);
    for (Movement movement : sheet.movements()) {
      Set<Integer> taken = new HashSet<>();
      for (String other : together.getOrDefault(movement.name(), Set.of())) {
        taken.add(parts.getOrDefault(other, -1));
      }
      int part = 0;
      while (taken.contains(part)) {
        part++;
      }
      parts.put(movement.name(), part);
    }
    this.count = parts.values().stream().mapToInt(part -> part + 1).max().orElse(1);
  }

  private Map<String, Set<String>> together(FilmSheet sheet) {
    Map<String, Set<String>> together = new LinkedHashMap<>();
    List<PlannedReveal> reveals = sheet.reveals();
    for (PlannedReveal one : reveals) {
      for (PlannedReveal other : reveals) {
        if (one.shot() != other.shot() || one.layer() == other.layer()) {
          continue;
        }
        if (one.movement().equals(other.movement())) {
          onTwoLayers.add(one.movement());
        } else {
          together.computeIfAbsent(one.movement(), name -> new HashSet<>()).add(other.movement());
        }
      }
    }
    return together;
  }

  /** Whether two layers of a shot show this movement. */
  boolean isOnTwoLayers(Movement movement) {
    return onTwoLayers.contains(movement.name());
  }

  /** The part of a movement: side by side first, or above one another in an upright frame. */
  PixelRect of(Movement movement, PixelRect whole) {
    int part = Objects.requireNonNull(parts.get(movement.name()), "a movement of another film");
    int more = (int) Math.ceil(Math.sqrt(count));
    int fewer = (count + more - 1) / more;
    boolean upright = whole.height() > whole.width();
    return cell(whole, part, upright ? fewer : more, upright ? more : fewer);
  }

  /** A cell of a grid, counted from 0 along the rows. */
  static PixelRect cell(PixelRect whole, int index, int columns, int rows) {
    int column = index % columns;
    int row = index / columns;
    return whole.part(
        (double) column / columns,
        (double) row / rows,
        (column + 1.0) / columns,
        (row + 1.0) / rows);
  }
}

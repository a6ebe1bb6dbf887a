package org.barsheet.shooting;

import java.util.List;
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
 * @param flap what moves on the model, by the name of the opening it is cut for
 * @param shot index of the first shot that shows it
 * @param panels panels that show it, in story order
 * @param fields what those panels see, where they say so, as if all of them showed that opening
 * @param standing openings that are seen and do not move, in the plan's order
 */
record MovementWork(
    Movement movement,
    Artwork.Model model,
    Opening opening,
    String flap,
    int shot,
    List<String> panels,
    List<Field> fields,
    List<Setup.Standing> standing) {

  MovementWork {
    panels = List.copyOf(panels);
    fields = List.copyOf(fields);
    standing = List.copyOf(standing);
  }
}

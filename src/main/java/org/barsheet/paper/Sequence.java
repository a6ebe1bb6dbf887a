package org.barsheet.paper;

import java.util.List;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;

/**
 * Photographs that follow one another.
 *
 * @param name of the movement, or "artwork at rest"
 * @param first permanent name of the first photograph
 * @param last permanent name of the last one
 */
record Sequence(String name, String first, String last) {

  /** Those of a movement that are taken: one that looks like the one before is not. */
  static Sequence of(Movement movement) {
    List<MovedPhotograph> taken =
        movement.photographs().stream().filter(one -> !one.isLikeBefore()).toList();
    return new Sequence(
        movement.name(),
        taken.get(0).photograph().name(),
        taken.get(taken.size() - 1).photograph().name());
  }

  /** {@code 000 – 030} of a movement; of others the whole names. */
  String range() {
    return first.startsWith(name + " ")
        ? first.substring(name.length() + 1) + " – " + last.substring(name.length() + 1)
        : first.equals(last) ? first : first + " – " + last;
  }
}

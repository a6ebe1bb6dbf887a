package org.barsheet.paper;

import org.barsheet.exposure.Movement;

/**
 * Photographs that follow one another.
 *
 * @param name of the movement, or "artwork at rest"
 * @param first permanent name of the first photograph
 * @param last permanent name of the last one
 */
record Sequence(String name, String first, String last) {

  static Sequence of(Movement movement) {
    int last = movement.photographs().size() - 1;
    return new Sequence(
        movement.name(),
        movement.photographs().get(0).photograph().name(),
        movement.photographs().get(last).photograph().name());
  }

  /** {@code 000 – 030} of a movement; of others the whole names. */
  String range() {
    return first.startsWith(name + " ")
        ? first.substring(name.length() + 1) + " – " + last.substring(name.length() + 1)
        : first.equals(last) ? first : first + " – " + last;
  }
}

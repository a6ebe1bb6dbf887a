package org.barsheet.ticks;

import java.util.List;
import java.util.Optional;

/**
 * A photograph in the order of work, and what people said of it.
 *
 * @param name its permanent name
 * @param setup number of its setup
 * @param take name of the movement or of the photograph at rest it belongs to
 * @param likeness what it shows, 12 hexadecimal digits: the same ones are the same photograph
 * @param mark what was said of it; empty while it has to be taken
 * @param workbook what the workbook alone says of it
 * @param notes what was written about it
 */
public record TakenPhotograph(
    String name,
    int setup,
    String take,
    String likeness,
    Optional<Mark> mark,
    Optional<Mark> workbook,
    List<String> notes) {

  public TakenPhotograph {
    notes = List.copyOf(notes);
  }

  /** Whether it is taken and need not be taken again. */
  public boolean isTaken() {
    return mark.filter(Mark.TAKEN::equals).isPresent();
  }

  /** Whether it was taken and was struck. */
  public boolean isAgain() {
    return mark.filter(Mark.AGAIN::equals).isPresent();
  }
}

package org.barsheet.shooting;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A day of work; a setup, where the plan does not say how long a day is.
 *
 * @param name {@code day 2}, or {@code setup 2}
 * @param date where the plan says when the work starts
 * @param stretches what is done, in order, at least one
 */
public record WorkDay(String name, Optional<LocalDate> date, List<Stretch> stretches) {

  public WorkDay {
    stretches = List.copyOf(stretches);
  }

  /** Names of the photographs it takes, in order. */
  public List<String> taken() {
    return stretches.stream().flatMap(stretch -> stretch.taken().stream()).toList();
  }
}

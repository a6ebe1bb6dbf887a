package org.barsheet.ticks;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A photograph ticked or struck.
 *
 * @param photograph its name when that was done
 * @param mark what was said
 * @param source who said it
 * @param likeness what it showed then, as {@link Likeness} tells it; empty where nobody noted that
 * @param at when, by the clock of whoever did it, where they noted that
 */
public record Tick(
    String photograph,
    Mark mark,
    Source source,
    Optional<String> likeness,
    Optional<LocalDateTime> at) {

  /** Where ticks come from. */
  public enum Source {
    WORKBOOK,
    PHONE,
    /** The photograph itself, which was looked at. */
    PHOTOGRAPH
  }
}

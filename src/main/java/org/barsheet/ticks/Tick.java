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
    WORKBOOK("the workbook"),
    PHONE("the phone");

    private final String words;

    Source(String words) {
      this.words = words;
    }

    /** As people are told. */
    public String words() {
      return words;
    }
  }

  /** The same tick of a photograph that showed something. */
  Tick showing(Optional<String> shown) {
    return new Tick(photograph, mark, source, likeness.or(() -> shown), at);
  }
}

package org.barsheet.plan;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where a plan was read from and what was noticed on the way.
 *
 * @param file the plan's own, as the person named it
 * @param table the panels' own file, where they stand in one
 * @param given the settings the plan states itself ({@code film.tail}); all others are defaults
 * @param notes what was set aside or assumed while reading: an unknown column of a table, say
 */
public record PlanText(Path file, Optional<Path> table, Set<String> given, List<PlanNote> notes) {

  public PlanText {
    given = Collections.unmodifiableSet(new TreeSet<>(given));
    notes = List.copyOf(notes);
  }

  /** A plan of which nothing is known but its file. */
  public static PlanText of(Path file) {
    return new PlanText(file, Optional.empty(), Set.of(), List.of());
  }
}

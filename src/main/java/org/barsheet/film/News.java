package org.barsheet.film;

import java.util.List;
import org.barsheet.changes.Changes;

/**
 * What everybody must be told since they were last sent something.
 *
 * @param since what they were sent, in words: {@code second draft}, {@code the sheets before}
 * @param changes what differs from it
 */
public record News(String since, Changes changes) {

  /** What a performer must be told, in sentences. */
  List<String> of(String performer) {
    return changes.told().stream()
        .filter(told -> told.who().equals(performer))
        .flatMap(told -> told.sentences().stream())
        .toList();
  }
}

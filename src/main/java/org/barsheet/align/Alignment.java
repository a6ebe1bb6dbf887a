package org.barsheet.align;

import java.util.List;
import java.util.Optional;

/**
 * The aligner's layout with what there is to say about it.
 *
 * @param layout a place for every panel
 * @param reasons why, one a panel
 * @param alternatives the second-best place, one a panel, where there is one
 */
public record Alignment(
    Layout layout, List<String> reasons, List<Optional<Alternative>> alternatives) {

  public Alignment {
    reasons = List.copyOf(reasons);
    alternatives = List.copyOf(alternatives);
  }
}

package org.barsheet.align;

import java.util.List;
import java.util.Optional;

/**
 * The aligner's answer with what there is to say about it.
 *
 * @param answer a place for every panel
 * @param reasons why, one a panel
 * @param rivals the second-best place, one a panel, where there is one
 */
public record Alignment(Answer answer, List<String> reasons, List<Optional<Rival>> rivals) {

  public Alignment {
    reasons = List.copyOf(reasons);
    rivals = List.copyOf(rivals);
  }
}

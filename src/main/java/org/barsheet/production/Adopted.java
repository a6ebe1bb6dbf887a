package org.barsheet.production;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.adoption.Carried;

/**
 * A plan on another version of its score.
 *
 * @param carried everything of the plan that stands on the music, in the plan's order
 * @param kept the plan's files as they were before, where they were written anew
 */
public record Adopted(List<Carried> carried, List<Path> kept) {

  public Adopted {
    carried = List.copyOf(carried);
    kept = List.copyOf(kept);
  }
}

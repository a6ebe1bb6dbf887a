package org.barsheet.plan;

import java.util.List;
import java.util.Optional;

/**
 * What the animator works with.
 *
 * @param artwork the whole artwork and its models
 * @param openings in the order written
 * @param camera lens, sensor and photograph size, where given
 * @param hand what the animator's hand can set
 * @param shoot the director's own rates of work, where given
 */
public record Workshop(
    Artwork artwork,
    List<Opening> openings,
    Optional<Camera> camera,
    Hand hand,
    Optional<Shoot> shoot) {

  public Workshop {
    openings = List.copyOf(openings);
  }

  /** The opening of a name, if the plan has it. */
  public Optional<Opening> opening(String name) {
    return openings.stream().filter(opening -> opening.name().equals(name)).findFirst();
  }
}

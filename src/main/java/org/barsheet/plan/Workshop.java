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
 * @param tolerances from how much on a photograph is told to be wrong
 */
public record Workshop(
    Artwork artwork,
    List<Opening> openings,
    Optional<Camera> camera,
    Hand hand,
    Optional<Shoot> shoot,
    Tolerances tolerances) {

  public Workshop {
    openings = List.copyOf(openings);
  }

  /** With the tolerances a plan has that says nothing of them. */
  public Workshop(
      Artwork artwork,
      List<Opening> openings,
      Optional<Camera> camera,
      Hand hand,
      Optional<Shoot> shoot) {
    this(artwork, openings, camera, hand, shoot, Tolerances.DEFAULT);
  }

  /** The opening of a name, if the plan has it. */
  public Optional<Opening> opening(String name) {
    return openings.stream().filter(opening -> opening.name().equals(name)).findFirst();
  }
}

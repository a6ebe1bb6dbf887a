package org.barsheet.shooting;

import java.util.List;
import java.util.OptionalDouble;
import org.barsheet.shooting.Setup.Standing;

/**
 * A photograph of the whole artwork at rest, on which panels stand in which nothing of the artwork
 * itself is moved. It is taken when the artwork stands so.
 *
 * @param name permanent: that of the first panel that stands on it
 * @param standing openings that its panels see, and how far each stands open, in the plan's order
 * @param panels panels that stand on it, in story order
 * @param enlargement how many times the camera's pixels are enlarged in the narrowest of them,
 *     where camera and fields are known; more than 1 means that the photograph is blown up
 */
public record ArtworkPlate(
    String name, List<Standing> standing, List<String> panels, OptionalDouble enlargement)
    implements Take {

  public ArtworkPlate {
    standing = List.copyOf(standing);
    panels = List.copyOf(panels);
  }

  /** Openings that have to stand open, and how far, in the plan's order. */
  public List<Standing> open() {
    return standing.stream().filter(one -> one.open() > 0).toList();
  }

  @Override
  public List<String> taken() {
    return List.of(name);
  }
}

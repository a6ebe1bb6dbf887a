package org.barsheet.plan;

import java.util.List;
import java.util.Optional;

/**
 * The whole artwork, measured in squares of its graph paper from the top left corner.
 *
 * @param squareMillimeters side of one square, more than 0
 * @param squaresWide width in squares
 * @param squaresHigh height in squares
 * @param palette its colors, RRGGBB without '#'
 * @param smallestWorkableMillimeters the smallest opening a hand can work, 0 where not given
 * @param models the things put under the camera, in the order written
 */
public record Artwork(
    double squareMillimeters,
    double squaresWide,
    double squaresHigh,
    List<String> palette,
    double smallestWorkableMillimeters,
    List<Model> models) {

  public Artwork {
    palette = List.copyOf(palette);
    models = List.copyOf(models);
  }

  /** The model of a name, if there is one. */
  public Optional<Model> model(String name) {
    return models.stream().filter(model -> model.name().equals(name)).findFirst();
  }

  /**
   * A physical thing put under the camera.
   *
   * @param name unique in the plan
   * @param enlarged how many times larger than in the artwork, 1 for the artwork itself
   * @param backing color behind its openings ("green"), or ""
   * @param light a word for how it is lit, or ""
   */
  public record Model(String name, double enlarged, String backing, String light) {}
}

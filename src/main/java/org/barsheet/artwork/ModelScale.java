package org.barsheet.artwork;

import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;

/**
 * Size of a model under the camera.
 *
 * @param model what it is
 * @param squareMillimeters side of one square of the artwork as it is on the model
 */
public record ModelScale(Artwork.Model model, double squareMillimeters) {

  /** The scale of the model that an opening is photographed on. */
  public static ModelScale of(Opening opening, Artwork artwork) {
    return of(artwork.model(opening.model()).orElseThrow(), artwork);
  }

  public static ModelScale of(Artwork.Model model, Artwork artwork) {
    return new ModelScale(model, artwork.squareMillimeters() * model.enlarged());
  }

  /** How many times larger than in the artwork. */
  public double enlarged() {
    return model.enlarged();
  }

  /** A length given in squares, in millimeters on the model. */
  public double millimeters(double squares) {
    return squares * squareMillimeters;
  }
}

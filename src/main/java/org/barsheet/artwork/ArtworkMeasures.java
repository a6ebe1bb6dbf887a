package org.barsheet.artwork;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Field;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Plan;

/**
 * How large everything is: in squares, on the model, and in the frame.
 *
 * @param wholeWide width in squares of the field that shows the whole artwork
 * @param pixelsPerSquare pixels of the frame to one square while the whole artwork is shown
 * @param headroom the camera's pixels to one of the film's, where the camera is known
 * @param narrowestField width in squares of the narrowest part of a photograph of the whole artwork
 *     that fills the frame without being blown up, where the camera is known
 * @param openings in the plan's order
 */
public record ArtworkMeasures(
    double wholeWide,
    double pixelsPerSquare,
    OptionalDouble headroom,
    OptionalDouble narrowestField,
    List<OpeningMeasure> openings) {

  public ArtworkMeasures {
    openings = List.copyOf(openings);
  }

  /**
   * One opening.
   *
   * @param opening which
   * @param scale of the model it is photographed on
   * @param closest the panel that moves it or shows somebody in it and sees it largest, where one
   *     gives a field
   * @param closestPixelsPerSquare pixels of the frame to one square there, 0 without one
   */
  public record OpeningMeasure(
      Opening opening, ModelScale scale, Optional<Panel> closest, double closestPixelsPerSquare) {}

  /** Measures a plan's artwork. */
  public static ArtworkMeasures of(Plan plan) {
    Artwork artwork = plan.workshop().artwork();
    Film film = plan.film();
    double width =
        Math.max(artwork.squaresWide(), artwork.squaresHigh() * film.width() / film.height());
    OptionalDouble headroom =
        plan.workshop()
            .camera()
            .map(camera -> OptionalDouble.of(new Optics(camera, film).headroom()))
            .orElse(OptionalDouble.empty());
    return new ArtworkMeasures(
        width,
        film.width() / width,
        headroom,
        headroom.isPresent()
            ? OptionalDouble.of(width / headroom.getAsDouble())
            : OptionalDouble.empty(),
        plan.workshop().openings().stream().map(opening -> measure(opening, plan)).toList());
  }

  private static OpeningMeasure measure(Opening opening, Plan plan) {
    Optional<Panel> closest = Optional.empty();
    double narrowest = Double.POSITIVE_INFINITY;
    for (Panel panel : plan.panels()) {
      double width = panel.field().map(ArtworkMeasures::narrowest).orElse(narrowest);
      if (shows(panel, opening) && width < narrowest) {
        closest = Optional.of(panel);
        narrowest = width;
      }
    }
    return new OpeningMeasure(
        opening,
        ModelScale.of(opening, plan.workshop().artwork()),
        closest,
        closest.isPresent() ? plan.film().width() / narrowest : 0);
  }

  private static double narrowest(Field field) {
    return Math.min(field.from().width(), field.to().width());
  }

  private static boolean shows(Panel panel, Opening opening) {
    return panel.reveals().stream().anyMatch(reveal -> reveal.opening().equals(opening.name()))
        || panel.appears().stream().anyMatch(seen -> seen.opening().equals(opening.name()));
  }
}

package org.barsheet.frames;

import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;

/**
 * How an opening is drawn where it is not photographed yet.
 *
 * @param opening which
 * @param kind what moves
 * @param side a flap's hinge, or where a shutter goes
 * @param full the amount of the last photograph of its movement, in the movement's unit; 0 where
 *     that does not move
 * @param share how far it goes in the end, 0 to 1: a lamp or an iris may stop before
 * @param travel squares that a shutter goes, else 0
 */
public record OpeningShape(
    Opening opening, Kind kind, Side side, double full, double share, double travel) {

  /** What moves. */
  public enum Kind {
    FLAP,
    SLIDE,
    LIFT,
    LIGHT,
    IRIS,
    VALUES
  }

  /** The shape of an opening of a film. */
  public static OpeningShape of(FilmSheet sheet, Opening opening) {
    double full = fullAmount(sheet, opening);
    Opening.Motion motion = opening.motion();
    if (motion instanceof Hinged hinged) {
      return new OpeningShape(opening, Kind.FLAP, hinged.hinge(), full, 1, 0);
    } else if (motion instanceof Slides slides) {
      double travel = travel(sheet.plan().workshop().artwork(), opening, slides);
      return new OpeningShape(opening, Kind.SLIDE, slides.toward(), full, 1, travel);
    } else if (motion instanceof LiftsOff) {
      return new OpeningShape(opening, Kind.LIFT, Side.TOP, full, 1, 0);
    } else if (motion instanceof Brightens brightens) {
      return new OpeningShape(opening, Kind.LIGHT, Side.TOP, full, brightens.percent() / 100, 0);
    } else if (motion instanceof Iris iris) {
      return new OpeningShape(opening, Kind.IRIS, Side.TOP, full, iris.percent() / 100, 0);
    }
    return new OpeningShape(opening, Kind.VALUES, Side.TOP, full, 1, 0);
  }

  private static double fullAmount(FilmSheet sheet, Opening opening) {
    return sheet.movements().stream()
        .filter(movement -> movement.openings().contains(opening.name()))
        .flatMap(movement -> movement.photographs().stream())
        .mapToDouble(photograph -> photograph.measures().amount())
        .max()
        .orElse(1);
  }

  /** Squares a shutter goes; where the plan gives no way as far as it is wide, or high. */
  private static double travel(Artwork artwork, Opening opening, Slides slides) {
    boolean sideways = slides.toward() == Side.LEFT || slides.toward() == Side.RIGHT;
    double size = sideways ? opening.rect().width() : opening.rect().height();
    double enlarged = artwork.model(opening.model()).map(Artwork.Model::enlarged).orElse(1.0);
    return slides.millimeters() > 0
        ? slides.millimeters() / (artwork.squareMillimeters() * enlarged)
        : size;
  }

  /** Share of its movement that is done at an amount, 0 to 1. */
  private double done(double amount) {
    return full > 0 ? Math.max(0, Math.min(1, amount / full)) : 0;
  }

  /** What covers it at an amount, in the movement's unit. */
  public Cover coverAt(double amount) {
    double gone = share * done(amount);
    return switch (kind) {
      case FLAP -> Cover.flap(opening.rect(), side, amount);
      case SLIDE -> Cover.shutter(opening.rect(), side, travel * gone);
      case IRIS -> Cover.iris(opening.rect(), gone);
      case LIFT -> Cover.lifted(opening.rect(), gone);
      case LIGHT, VALUES -> Cover.dark(opening.rect(), gone);
    };
  }
}

package org.barsheet.review;

import java.util.Locale;
import org.barsheet.exposure.Movement;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.MotionWords;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/** The artwork, its openings, and the photographs of each movement. */
final class ArtworkData {

  private final FilmSheet sheet;
  private final Artwork artwork;
  private final PageJson json;

  ArtworkData(FilmSheet sheet, PageJson json) {
    this.sheet = sheet;
    this.artwork = sheet.plan().workshop().artwork();
    this.json = json;
  }

  void write() {
    json.name("artwork")
        .object(
            () ->
                json.decimal("width", artwork.squaresWide())
                    .decimal("height", artwork.squaresHigh())
                    .texts("palette", artwork.palette()));
    json.objects("openings", sheet.plan().workshop().openings(), this::opening);
    json.objects("movements", sheet.movements(), this::movement);
  }

  private void opening(Opening opening) {
    json.text("name", opening.name()).text("model", opening.model());
    rect(json, "rect", opening.rect());
    json.text("motion", MotionWords.of(opening.motion()));
    shape(opening);
    json.texts("heldBy", opening.heldBy().stream().map(Opening.Support::text).toList());
  }

  /** How it is drawn: the kind of movement, toward where, and how far it goes in the end. */
  private void shape(Opening opening) {
    json.decimal("full", fullAmount(opening));
    if (opening.motion() instanceof Opening.Hinged hinged) {
      kind("flap", hinged.hinge()).decimal("share", 1);
    } else if (opening.motion() instanceof Opening.Slides slides) {
      kind("slide", slides.toward()).decimal("share", 1);
      json.decimal("travel", travel(opening, slides));
    } else if (opening.motion() instanceof Opening.LiftsOff) {
      kind("lift", Opening.Side.TOP).decimal("share", 1);
    } else if (opening.motion() instanceof Opening.Brightens brightens) {
      kind("light", Opening.Side.TOP).decimal("share", brightens.percent() / 100);
    } else if (opening.motion() instanceof Opening.Iris iris) {
      kind("iris", Opening.Side.TOP).decimal("share", iris.percent() / 100);
    } else {
      kind("values", Opening.Side.TOP).decimal("share", 1);
    }
  }

  private PageJson kind(String kind, Opening.Side side) {
    return json.text("kind", kind).text("side", side.name().toLowerCase(Locale.ROOT));
  }

  /** The amount of the last photograph of its movement, in the movement's unit. */
  private double fullAmount(Opening opening) {
    return sheet.movements().stream()
        .filter(movement -> movement.openings().contains(opening.name()))
        .flatMap(movement -> movement.photographs().stream())
        .mapToDouble(photograph -> photograph.measures().amount())
        .max()
        .orElse(1);
  }

  /** Squares a shutter goes; where the plan gives no way as far as it is wide, or high. */
  private double travel(Opening opening, Opening.Slides slides) {
    boolean sideways =
        slides.toward() == Opening.Side.LEFT || slides.toward() == Opening.Side.RIGHT;
    double size = sideways ? opening.rect().width() : opening.rect().height();
    double enlarged = artwork.model(opening.model()).map(Artwork.Model::enlarged).orElse(1.0);
    return slides.millimeters() > 0
        ? slides.millimeters() / (artwork.squareMillimeters() * enlarged)
        : size;
  }

  private void movement(Movement movement) {
    json.text("name", movement.name());
    json.text("unit", movement.measure().unit());
    json.list(
        "amounts",
        movement.photographs(),
        photograph -> json.decimal(photograph.measures().amount()));
    json.texts(
        "sets",
        movement.photographs().stream()
            .map(photograph -> photograph.measures().set().toPlainString())
            .toList());
    json.texts(
        "holds",
        movement.photographs().stream()
            .map(photograph -> PageWords.hold(photograph.measures()))
            .toList());
  }

  static void rect(PageJson json, String name, Rect rect) {
    json.list(name, () -> rect(json, rect));
  }

  /** Left, top, width and height, in squares. */
  static void rect(PageJson json, Rect rect) {
    json.decimal(rect.left()).decimal(rect.top()).decimal(rect.width()).decimal(rect.height());
  }
}

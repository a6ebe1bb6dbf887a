package org.barsheet.review;

import java.util.Locale;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.exposure.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/** The artwork, its openings, and the pictures of each movement. */
final class ArtworkData {

  private final FilmSheet sheet;
  private final Artwork artwork;
  private final PageJson json;

  ArtworkData(FilmSheet sheet, PageJson json) {
    this.sheet = sheet;
    this.artwork = sheet.timing().plan().artwork();
    this.json = json;
  }

  void write() {
    json.name("artwork")
        .object(
            () ->
                json.decimal("wide", artwork.squaresWide())
                    .decimal("high", artwork.squaresHigh())
                    .texts("palette", artwork.palette()));
    json.objects("openings", sheet.timing().plan().openings(), this::opening);
    json.objects("movements", sheet.movements(), this::movement);
  }

  private void opening(Opening opening) {
    json.text("name", opening.name()).text("model", opening.model());
    rect(json, "rect", opening.rect());
    json.text("motion", PageWords.motion(opening.motion()));
    shape(opening);
    json.texts("heldBy", opening.heldBy().stream().map(Opening.Support::text).toList());
  }

  /** How it is drawn: the kind of movement, towards where, and the amount at which it is open. */
  private void shape(Opening opening) {
    if (opening.motion() instanceof Opening.Hinged hinged) {
      kind("flap", hinged.hinge(), hinged.degrees());
    } else if (opening.motion() instanceof Opening.Slides slides) {
      slide(opening, slides);
    } else if (opening.motion() instanceof Opening.LiftsOff lifts) {
      kind("lift", Opening.Side.TOP, lifts.millimetres());
    } else if (opening.motion() instanceof Opening.Brightens) {
      kind("light", Opening.Side.TOP, 100);
    } else if (Measure.of(opening, artwork) instanceof Measure.Widening hole) {
      kind("iris", Opening.Side.TOP, hole.full());
    } else if (opening.motion() instanceof Opening.Values values) {
      double last = values.values().isEmpty() ? 1 : values.values().get(values.values().size() - 1);
      kind("values", Opening.Side.TOP, last);
    }
  }

  private void kind(String kind, Opening.Side side, double full) {
    json.text("kind", kind).text("side", side.name().toLowerCase(Locale.ROOT));
    json.decimal("full", full);
  }

  /** Where no way is given a shutter goes as far as it is wide, or high. */
  private void slide(Opening opening, Opening.Slides slides) {
    boolean sideways =
        slides.towards() == Opening.Side.LEFT || slides.towards() == Opening.Side.RIGHT;
    double size = sideways ? opening.rect().wide() : opening.rect().high();
    double enlarged = artwork.model(opening.model()).map(Artwork.Model::enlarged).orElse(1.0);
    double square = artwork.squareMillimetres() * enlarged;
    double full = slides.millimetres() > 0 ? slides.millimetres() : size * square;
    kind("slide", slides.towards(), full);
    json.decimal("travel", full / square);
  }

  private void movement(Movement movement) {
    json.text("name", movement.name()).text("model", movement.model());
    json.text("unit", movement.measure().unit());
    json.list("amounts", movement.pictures(), picture -> json.decimal(picture.measures().amount()));
  }

  static void rect(PageJson json, String name, Rect rect) {
    json.list(name, () -> rect(json, rect));
  }

  /** Left, top, width and height, in squares. */
  static void rect(PageJson json, Rect rect) {
    json.decimal(rect.left()).decimal(rect.top()).decimal(rect.wide()).decimal(rect.high());
  }
}

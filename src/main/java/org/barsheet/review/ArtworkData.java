package org.barsheet.review;

import org.barsheet.exposure.Movement;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.FilmFrames;
import org.barsheet.frames.OpeningShape;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.MotionWords;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/** The artwork, its openings, and the photographs of each movement. */
final class ArtworkData {

  private final FilmSheet sheet;
  private final FilmFrames frames;
  private final Artwork artwork;
  private final PageJson json;
  private final PagePhotographs photographs;

  ArtworkData(FilmFrames frames, PageJson json) {
    this.frames = frames;
    this.sheet = frames.film();
    this.artwork = sheet.plan().workshop().artwork();
    this.json = json;
    this.photographs = new PagePhotographs(sheet, json);
  }

  void write() {
    json.name("artwork")
        .object(
            () ->
                json.decimal("width", artwork.squaresWide())
                    .decimal("height", artwork.squaresHigh())
                    .texts("palette", artwork.palette()));
    json.objects("openings", frames.shapes(), this::opening);
    json.objects("movements", sheet.movements(), this::movement);
  }

  private void opening(OpeningShape shape) {
    Opening opening = shape.opening();
    json.text("name", opening.name()).text("model", opening.model());
    rect(json, "rect", opening.rect());
    json.text("motion", MotionWords.of(opening.motion()));
    shape(shape);
    json.texts("heldBy", opening.heldBy().stream().map(Opening.Support::text).toList());
  }

  /** How it is drawn: the kind of movement, toward where, and how far it goes in the end. */
  private void shape(OpeningShape shape) {
    json.decimal("full", shape.full());
    json.text("kind", PageWords.word(shape.kind())).text("side", PageWords.word(shape.side()));
    json.decimal("share", shape.share());
    if (shape.kind() == OpeningShape.Kind.SLIDE) {
      json.decimal("travel", shape.travel());
    }
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
    photographs.write(movement);
  }

  static void rect(PageJson json, String name, Rect rect) {
    json.list(name, () -> rect(json, rect));
  }

  /** Left, top, width and height, in squares. */
  static void rect(PageJson json, Rect rect) {
    json.decimal(rect.left()).decimal(rect.top()).decimal(rect.width()).decimal(rect.height());
  }
}

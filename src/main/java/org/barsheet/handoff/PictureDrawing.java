package org.barsheet.handoff;

import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPicture;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.handoff.drawing.OpeningDrawing;
import org.barsheet.handoff.drawing.PaperColor;
import org.barsheet.handoff.drawing.PixelRect;
import org.barsheet.plan.Opening;

/**
 * The pictures of a movement: its name, the number, how far it has gone, and its opening at that
 * step. They stand in the movement's own part of the frame and are clear around it.
 */
final class PictureDrawing {

  private final Movement movement;
  private final Opening opening;
  private final PictureParts parts;

  PictureDrawing(FilmSheet sheet, Movement movement, PictureParts parts) {
    this.movement = movement;
    this.opening = sheet.plan().workshop().opening(movement.openings().get(0)).orElseThrow();
    this.parts = parts;
  }

  void draw(Canvas canvas, MovedPicture picture) {
    int line = Math.max(1, canvas.whole().high() / 270);
    PixelRect part = parts.of(movement, canvas.whole()).part(0.04, 0.3, 0.96, 0.94);
    if (parts.isOnTwoLayers(movement)) {
      amongItsFellows(canvas, part, line, picture);
    } else {
      alone(canvas, part, line, picture);
    }
  }

  private void alone(Canvas canvas, PixelRect card, int line, MovedPicture picture) {
    paper(canvas, card, line);
    PixelRect words = card.part(0.05, 0.06, 0.55, 0.94);
    int number = picture.picture().number();
    canvas.text(movement.name(), words.part(0, 0, 1, 0.14), PaperColor.INK);
    canvas.text(picture.picture().digits(), words.part(0, 0.2, 1, 0.68), PaperColor.INK);
    canvas.text(number + " of " + last(), words.part(0, 0.74, 1, 0.84), PaperColor.PENCIL);
    canvas.text(measure(picture), words.part(0, 0.88, 1, 1), PaperColor.INK);
    opening(canvas, room(card), line, picture);
  }

  /** The name above, and below it the picture in its own cell: two pictures can be seen at once. */
  private void amongItsFellows(Canvas canvas, PixelRect part, int line, MovedPicture picture) {
    PixelRect name = part.part(0, 0, 1, 0.1);
    paper(canvas, name, line);
    canvas.text(
        movement.name() + ", 0 to " + last(), name.part(0.03, 0.2, 0.97, 0.8), PaperColor.INK);
    int columns = (int) Math.ceil(Math.sqrt(last() + 1));
    int rows = (last() + columns) / columns;
    PixelRect cell =
        PictureParts.cell(part.part(0, 0.12, 1, 1), picture.picture().number(), columns, rows);
    paper(canvas, cell, line);
    canvas.text(picture.picture().digits(), cell.part(0.12, 0.08, 0.88, 0.4), PaperColor.INK);
    opening(canvas, cell.part(0.35, 0.5, 0.65, 0.9), line, picture);
  }

  private static void paper(Canvas canvas, PixelRect box, int line) {
    canvas.fill(box, PaperColor.PAPER);
    canvas.outline(box, 2 * line, PaperColor.INK);
  }

  private int last() {
    return movement.pictures().size() - 1;
  }

  private void opening(Canvas canvas, PixelRect room, int line, MovedPicture picture) {
    PixelRect hole = room.fitted(opening.rect().wide(), opening.rect().high());
    new OpeningDrawing(canvas, hole, line)
        .draw(opening.motion(), share(picture), picture.measures().amount());
  }

  /** A piece that leaves its hole has room beside it on the card. */
  private PixelRect room(PixelRect card) {
    boolean leaves =
        opening.motion() instanceof Opening.Slides
            || (opening.motion() instanceof Opening.Hinged hinged && hinged.degrees() > 90);
    return leaves ? card.part(0.7, 0.36, 0.82, 0.64) : card.part(0.62, 0.2, 0.92, 0.8);
  }

  /** Share of the way gone; of its own size for a piece that slides. */
  private double share(MovedPicture picture) {
    return opening.motion() instanceof Opening.Slides
        ? picture.measures().uncovered()
        : picture.measures().amount() / movement.measure().whole();
  }

  private String measure(MovedPicture picture) {
    String percent = Math.round(100 * picture.progress()) + " %";
    String unit = movement.measure().unit();
    String amount = picture.measures().set().toPlainString() + " " + unit;
    return unit.equals("%") ? percent : percent + ", " + amount;
  }
}

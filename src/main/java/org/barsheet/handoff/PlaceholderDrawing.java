package org.barsheet.handoff;

import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.handoff.drawing.OpeningDrawing;
import org.barsheet.handoff.drawing.PaperColor;
import org.barsheet.handoff.drawing.PixelRect;
import org.barsheet.plan.Opening;

/**
 * The photographs of a movement: its name, the number, how far it has gone, and its opening at that
 * step. They stand in the movement's own part of the frame and are clear around it.
 */
final class PlaceholderDrawing {

  private final Movement movement;
  private final Opening opening;
  private final PhotographParts parts;

  PlaceholderDrawing(FilmSheet sheet, Movement movement, PhotographParts parts) {
    this.movement = movement;
    this.opening = sheet.plan().workshop().opening(movement.openings().get(0)).orElseThrow();
    this.parts = parts;
  }

  void draw(Canvas canvas, MovedPhotograph photograph) {
    int line = Math.max(1, canvas.whole().height() / 270);
    PixelRect part = parts.of(movement, canvas.whole()).part(0.04, 0.3, 0.96, 0.94);
    if (parts.isOnTwoLayers(movement)) {
      amongItsFellows(canvas, part, line, photograph);
    } else {
      alone(canvas, part, line, photograph);
    }
  }

  private void alone(Canvas canvas, PixelRect card, int line, MovedPhotograph photograph) {
    paper(canvas, card, line);
    PixelRect words = card.part(0.05, 0.06, 0.55, 0.94);
    int number = photograph.photograph().number();
    canvas.text(movement.name(), words.part(0, 0, 1, 0.14), PaperColor.INK);
    canvas.text(photograph.photograph().digits(), words.part(0, 0.2, 1, 0.68), PaperColor.INK);
    canvas.text(number + " of " + last(), words.part(0, 0.74, 1, 0.84), PaperColor.PENCIL);
    canvas.text(measure(photograph), words.part(0, 0.88, 1, 1), PaperColor.INK);
    opening(canvas, room(card), line, photograph);
  }

  /**
   * The name above, and below it the photograph in its own cell: two photographs can be seen at
   * once.
   */
  private void amongItsFellows(
      Canvas canvas, PixelRect part, int line, MovedPhotograph photograph) {
    PixelRect name = part.part(0, 0, 1, 0.1);
    paper(canvas, name, line);
    canvas.text(
        movement.name() + ", 0 to " + last(), name.part(0.03, 0.2, 0.97, 0.8), PaperColor.INK);
    int columns = (int) Math.ceil(Math.sqrt(last() + 1));
    int rows = (last() + columns) / columns;
    PixelRect cell =
        PhotographParts.cell(
            part.part(0, 0.12, 1, 1), photograph.photograph().number(), columns, rows);
    paper(canvas, cell, line);
    canvas.text(photograph.photograph().digits(), cell.part(0.12, 0.08, 0.88, 0.4), PaperColor.INK);
    opening(canvas, cell.part(0.35, 0.5, 0.65, 0.9), line, photograph);
  }

  private static void paper(Canvas canvas, PixelRect box, int line) {
    canvas.fill(box, PaperColor.PAPER);
    canvas.outline(box, 2 * line, PaperColor.INK);
  }

  private int last() {
    return movement.photographs().size() - 1;
  }

  private void opening(Canvas canvas, PixelRect room, int line, MovedPhotograph photograph) {
    PixelRect hole = room.fitted(opening.rect().width(), opening.rect().height());
    new OpeningDrawing(canvas, hole, line)
        .draw(opening.motion(), share(photograph), photograph.measures().amount());
  }

  /** A piece that leaves its hole has room beside it on the card. */
  private PixelRect room(PixelRect card) {
    boolean leaves =
        opening.motion() instanceof Opening.Slides
            || (opening.motion() instanceof Opening.Hinged hinged && hinged.degrees() > 90);
    return leaves ? card.part(0.7, 0.36, 0.82, 0.64) : card.part(0.62, 0.2, 0.92, 0.8);
  }

  /** Share of the way gone; of its own size for a piece that slides. */
  private double share(MovedPhotograph photograph) {
    return opening.motion() instanceof Opening.Slides
        ? photograph.measures().uncovered()
        : photograph.measures().amount() / movement.measure().whole();
  }

  private String measure(MovedPhotograph photograph) {
    String percent = Math.round(100 * photograph.progress()) + " %";
    String unit = movement.measure().unit();
    String amount = photograph.measures().set().toPlainString() + " " + unit;
    return unit.equals("%") ? percent : percent + ", " + amount;
  }
}

package org.barsheet.handoff;

import org.barsheet.exposure.FilmSheet;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPicture;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.handoff.drawing.Box;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.handoff.drawing.Ink;
import org.barsheet.handoff.drawing.OpeningDrawing;
import org.barsheet.plan.Opening;

/**
 * The pictures of a movement: its name, the number, how far it has gone, and its opening at that
 * step. Each layer has a part of the frame of its own and is clear around it, so that two layers
 * over one another can both be seen.
 */
final class PictureDrawing {

  private final Movement movement;
  private final Opening opening;
  private final int layer;
  private final int layers;

  PictureDrawing(FilmSheet sheet, Movement movement) {
    this.movement = movement;
    this.opening = sheet.timing().plan().opening(movement.openings().get(0)).orElseThrow();
    this.layers = Math.max(1, PicturesCsv.layers(sheet));
    this.layer =
        sheet.reveals().stream()
            .filter(reveal -> reveal.movement().equals(movement.name()))
            .mapToInt(PlannedReveal::layer)
            .min()
            .orElse(1);
  }

  void draw(Canvas canvas, MovedPicture picture) {
    int line = Math.max(1, canvas.whole().high() / 270);
    Box card = part(canvas.whole()).part(0.04, 0.3, 0.96, 0.94);
    canvas.fill(card, Ink.PAPER);
    canvas.outline(card, 2 * line, Ink.INK);
    Box words = card.part(0.05, 0.06, 0.55, 0.94);
    int last = movement.pictures().size() - 1;
    int number = picture.picture().number();
    canvas.text(movement.name(), words.part(0, 0, 1, 0.14), Ink.INK);
    canvas.text(picture.picture().digits(), words.part(0, 0.2, 1, 0.68), Ink.INK);
    canvas.text(number + " of " + last, words.part(0, 0.74, 1, 0.84), Ink.PENCIL);
    canvas.text(measure(picture), words.part(0, 0.88, 1, 1), Ink.INK);
    Box hole = room(card).fitted(opening.rect().wide(), opening.rect().high());
    new OpeningDrawing(canvas, hole, line)
        .draw(opening.motion(), share(picture), picture.measures().amount());
  }

  /** A piece that leaves its hole has room beside it on the card. */
  private Box room(Box card) {
    boolean leaves =
        opening.motion() instanceof Opening.Slides
            || (opening.motion() instanceof Opening.Hinged hinged && hinged.degrees() > 90);
    return leaves ? card.part(0.7, 0.36, 0.82, 0.64) : card.part(0.62, 0.2, 0.92, 0.8);
  }

  /** The layer's part of the frame: side by side first, or above one another in an upright one. */
  private Box part(Box whole) {
    int more = (int) Math.ceil(Math.sqrt(layers));
    int fewer = (layers + more - 1) / more;
    boolean upright = whole.high() > whole.wide();
    int columns = upright ? fewer : more;
    int rows = upright ? more : fewer;
    int column = (layer - 1) % columns;
    int row = (layer - 1) / columns;
    return whole.part(
        (double) column / columns,
        (double) row / rows,
        (column + 1.0) / columns,
        (row + 1.0) / rows);
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

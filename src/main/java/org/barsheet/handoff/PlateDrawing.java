package org.barsheet.handoff;

import java.util.Map;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.handoff.drawing.PaperColor;
import org.barsheet.handoff.drawing.PixelRect;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/** A photograph of the artwork at rest: all of its field, and which openings stand open in it. */
final class PlateDrawing {

  private final FilmSheet sheet;

  PlateDrawing(FilmSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * Draws it.
   *
   * @param field what the photograph shows, in squares of the artwork
   * @param open how far openings stand open, 0 to 1, by name; others are closed
   */
  void draw(Canvas canvas, Rect field, Map<String, Double> open, String name, String caption) {
    PixelRect whole = canvas.whole();
    int line = line(canvas);
    canvas.fill(whole, PaperColor.BAND);
    for (Opening opening : sheet.plan().workshop().openings()) {
      PixelRect box = in(whole, opening.rect(), field);
      boolean isOpen = open.getOrDefault(opening.name(), 0.0) > 0;
      canvas.fill(box, isOpen ? PaperColor.LAMP : PaperColor.PAPER);
      canvas.outline(box, line, PaperColor.INK);
      canvas.text(opening.name(), box.part(0.05, 0.02, 0.95, 0.3), PaperColor.INK);
    }
    PixelRect heading = whole.part(0, 0, 1, 0.1);
    canvas.fill(heading, PaperColor.PAPER);
    canvas.text(name, heading.part(0.02, 0.12, 0.98, 0.54), PaperColor.INK);
    canvas.text(caption, heading.part(0.02, 0.64, 0.98, 0.9), PaperColor.PENCIL);
    canvas.outline(whole, line, PaperColor.PENCIL);
  }

  static int line(Canvas canvas) {
    return Math.max(1, canvas.whole().height() / 270);
  }

  /** Where a part of the artwork lies on a photograph of a field. */
  static PixelRect in(PixelRect photograph, Rect part, Rect field) {
    return photograph.part(
        (part.left() - field.left()) / field.width(),
        (part.top() - field.top()) / field.height(),
        (part.left() + part.width() - field.left()) / field.width(),
        (part.top() + part.height() - field.top()) / field.height());
  }
}

package org.barsheet.handoff;

import java.util.Optional;
import org.barsheet.artwork.FrameRect;
import org.barsheet.artwork.Framing;
import org.barsheet.exposure.OpeningState;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.handoff.drawing.PaperColor;
import org.barsheet.handoff.drawing.PixelRect;
import org.barsheet.plan.Opening;
import org.barsheet.timing.Shot;

/**
 * The plate of a shot: what the camera sees of the artwork on the shot's first frame, and which
 * openings stand open.
 */
final class PlateDrawing {

  private PlateDrawing() {}

  static void draw(Canvas canvas, FilmSheet sheet, Photographs photographs, Shot shot) {
    PixelRect whole = canvas.whole();
    int line = Math.max(1, whole.height() / 270);
    canvas.fill(whole, PaperColor.BAND);
    Optional<Framing> framing = Framing.of(sheet.timing(), shot);
    framing.ifPresent(seen -> openings(canvas, sheet, shot, seen, line));
    PixelRect heading = whole.part(0, 0, 1, 0.16);
    canvas.fill(heading, PaperColor.PAPER);
    canvas.text(PhotographPaths.plate(shot), heading.part(0.02, 0.12, 0.98, 0.56), PaperColor.INK);
    canvas.text(
        caption(photographs, shot, framing),
        heading.part(0.02, 0.66, 0.98, 0.9),
        PaperColor.PENCIL);
    canvas.outline(whole, line, PaperColor.PENCIL);
  }

  private static String caption(Photographs photographs, Shot shot, Optional<Framing> framing) {
    String camera =
        framing.isEmpty()
            ? "field not given"
            : framing.get().field().isMoving() ? "the camera moves" : "the camera doesn't move";
    String action = shot.panel().action();
    String photograph = photographs.ofPlate(shot);
    return (action.isEmpty() ? "" : action + "; ")
        + camera
        + (photograph.isEmpty() ? "" : "; cut from: " + photograph);
  }

  private static void openings(
      Canvas canvas, FilmSheet sheet, Shot shot, Framing framing, int line) {
    for (Opening opening : sheet.plan().workshop().openings()) {
      PixelRect box = box(framing.inFrame(opening.rect(), shot.frames().start()));
      canvas.fill(box, openAtFirst(sheet, shot, opening) > 0 ? PaperColor.LAMP : PaperColor.PAPER);
      canvas.outline(box, line, PaperColor.INK);
      canvas.text(opening.name(), box.part(0.05, 0.02, 0.95, 0.3), PaperColor.INK);
    }
  }

  private static double openAtFirst(FilmSheet sheet, Shot shot, Opening opening) {
    return sheet.statesOf(shot).stream()
        .filter(state -> state.opening().equals(opening.name()))
        .mapToDouble(OpeningState::atFirstFrame)
        .findFirst()
        .orElse(0);
  }

  private static PixelRect box(FrameRect rect) {
    int left = (int) Math.round(rect.left());
    int top = (int) Math.round(rect.top());
    return new PixelRect(
        left, top, (int) Math.round(rect.right()) - left, (int) Math.round(rect.bottom()) - top);
  }
}

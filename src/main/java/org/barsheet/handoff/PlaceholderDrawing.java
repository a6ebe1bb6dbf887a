package org.barsheet.handoff;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.handoff.drawing.OpeningDrawing;
import org.barsheet.handoff.drawing.PaperColor;
import org.barsheet.handoff.drawing.PixelRect;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.Setup;

/**
 * The photographs of a movement as the camera on the stand sees them: the opening at its step where
 * it lies in the whole field, its name above and how far it has gone below. They are clear around
 * that, so that several layers can be seen together; only the first photograph of the artwork
 * itself, which is a plate as well, shows all of its field.
 */
final class PlaceholderDrawing {

  private final FilmSheet sheet;
  private final Movement movement;
  private final Opening opening;
  private final Rect field;

  PlaceholderDrawing(FilmSheet sheet, Photographs photographs, Movement movement) {
    this.sheet = sheet;
    this.movement = movement;
    this.opening = photographs.firstOpening(movement);
    this.field = photographs.view(movement);
  }

  void draw(Canvas canvas, MovedPhotograph photograph) {
    if (photograph.photograph().number() == 0 && isOfArtwork()) {
      new PlateDrawing(sheet)
          .draw(
              canvas,
              field,
              standing(),
              photograph.photograph().name(),
              "the artwork before it moves");
    }
    int line = PlateDrawing.line(canvas);
    PixelRect hole = PlateDrawing.in(canvas.whole(), opening.rect(), field);
    new OpeningDrawing(canvas, hole, line)
        .draw(opening.motion(), share(photograph), photograph.measures().amount());
    int high = Math.max(hole.height() / 6, canvas.whole().height() / 36);
    int above = Math.max(0, hole.y() - high);
    tag(canvas, new PixelRect(hole.x(), above, hole.width(), high), photograph.photograph().name());
    int below = Math.min(canvas.whole().height() - high, hole.y() + hole.height());
    tag(canvas, new PixelRect(hole.x(), below, hole.width(), high), measure(photograph));
  }

  private boolean isOfArtwork() {
    return sheet
        .plan()
        .workshop()
        .artwork()
        .model(movement.model())
        .map(model -> model.enlarged() == 1)
        .orElse(true);
  }

  private Map<String, Double> standing() {
    Map<String, Double> open = new HashMap<>();
    Optional<Setup.Run> run =
        sheet.shooting().setups().stream()
            .flatMap(setup -> setup.runs().stream())
            .filter(each -> each.movement().name().equals(movement.name()))
            .findFirst();
    run.ifPresent(taken -> taken.standing().forEach(one -> open.put(one.opening(), one.open())));
    return open;
  }

  private static void tag(Canvas canvas, PixelRect box, String words) {
    canvas.fill(box, PaperColor.PAPER);
    canvas.outline(box, Math.max(1, PlateDrawing.line(canvas) / 2), PaperColor.INK);
    canvas.text(words, box.part(0.04, 0.16, 0.96, 0.84), PaperColor.INK);
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

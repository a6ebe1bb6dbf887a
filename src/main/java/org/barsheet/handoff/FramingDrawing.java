package org.barsheet.handoff;

import java.util.Locale;
import org.barsheet.artwork.ClipCrop;
import org.barsheet.calls.CallFraming;
import org.barsheet.text.Html;

/**
 * A small drawing of a performer's frame to scale: what is cut off in gray, the opening as a heavy
 * box, and in it a head, shoulders and the instrument.
 */
final class FramingDrawing {

  /** Millimeters that the longer side of the frame takes up. */
  private static final double LONGER = 40;

  /** Room of the line below the frame, in millimeters. */
  private static final double LETTERS = 4;

  /** A head is so much narrower than it is high (common practice, no source). */
  private static final double SLIM = 0.75;

  private final CallFraming framing;
  private final double scale;
  private final double head;
  private final double middle;
  private final double top;

  private FramingDrawing(CallFraming framing) {
    this.framing = framing;
    this.scale = LONGER / Math.max(framing.frameWidth(), framing.frameHeight());
    ClipCrop hole = framing.hole();
    this.head = scale * hole.height() * framing.headShare();
    this.middle = scale * (hole.left() + hole.width() / 2);
    this.top = scale * (hole.top() + hole.height() * 0.1);
  }

  static void draw(Html html, CallFraming framing) {
    new FramingDrawing(framing).draw(html);
  }

  private void draw(Html html) {
    double width = scale * framing.frameWidth();
    double height = scale * framing.frameHeight();
    ClipCrop hole = framing.hole();
    html.open(
        "svg",
        "role",
        "img",
        "aria-label",
        "your frame with " + framing.opening(),
        "width",
        number(width) + "mm",
        "height",
        number(height + LETTERS) + "mm",
        "viewBox",
        "0 0 " + number(width) + " " + number(height + LETTERS));
    box(html, "cut", 0, 0, width, height);
    box(
        html,
        "hole",
        scale * hole.left(),
        scale * hole.top(),
        scale * hole.width(),
        scale * hole.height());
    figure(html);
    html.element("text", framing.opening(), "x", "0", "y", number(height + 3.2));
    html.close().line();
  }

  private static void box(Html html, String look, double x, double y, double width, double height) {
    html.empty(
        "rect",
        "class",
        look,
        "x",
        number(x),
        "y",
        number(y),
        "width",
        number(width),
        "height",
        number(height));
  }

  private void figure(Html html) {
    double chin = top + head;
    double neck = head * 0.12;
    double shoulder = head * 1.05;
    double bottom = scale * (framing.hole().top() + framing.hole().height());
    double at = chin + neck;
    box(html, "body", middle - head * 0.18, chin - head * 0.2, head * 0.36, head * 0.5);
    path(
        html,
        "body",
        move(middle - shoulder, bottom)
            + line(middle - shoulder, at + head * 0.45)
            + curve(middle - shoulder, at, middle - shoulder * 0.3, at)
            + line(middle + shoulder * 0.3, at)
            + curve(middle + shoulder, at, middle + shoulder, at + head * 0.45)
            + line(middle + shoulder, bottom));
    html.empty(
        "ellipse",
        "class",
        "head",
        "cx",
        number(middle),
        "cy",
        number(top + head / 2),
        "rx",
        number(head * SLIM / 2),
        "ry",
        number(head / 2));
    instrument(html, bottom);
  }

  /** In heads from the middle of the face: rough shapes, so that hands find their place. */
  private void instrument(Html html, double bottom) {
    double mouth = top + head * 0.78;
    double waist = Math.min(bottom - head * 0.3, mouth + head * 1.7);
    switch (framing.pose()) {
      case IN_FRONT -> bar(html, middle - head * 1.05, waist, middle + head * 1.05, waist, 0.35);
      case ACROSS -> bar(html, middle - head * 0.9, waist, middle + head, waist - head * 0.7, 0.3);
      case ON_THE_SHOULDER ->
          bar(
              html,
              middle + head * 0.2,
              mouth + head * 0.35,
              middle + head * 0.95,
              mouth + head * 0.7,
              0.3);
      case UPRIGHT -> bar(html, middle, mouth + head * 0.5, middle, bottom - head * 0.2, 0.75);
      case TO_THE_SIDE ->
          bar(html, middle + head * 0.05, mouth, middle - head * 0.95, mouth + head * 0.2, 0.1);
      case DOWN ->
          bar(html, middle, mouth, middle + head * 0.1, Math.min(bottom, mouth + head * 1.5), 0.16);
      case FORWARD ->
          bar(
              html,
              middle,
              mouth,
              middle + head * 0.25,
              Math.min(bottom, mouth + head * 0.9),
              0.45);
      case NOTHING_HELD -> {
        // Only head and shoulders.
      }
    }
  }

  private void bar(Html html, double x1, double y1, double x2, double y2, double thick) {
    html.empty(
        "line",
        "class",
        "instrument",
        "x1",
        number(x1),
        "y1",
        number(y1),
        "x2",
        number(x2),
        "y2",
        number(y2),
        "stroke-width",
        number(thick * head));
  }

  private static void path(Html html, String look, String shape) {
    html.empty("path", "class", look, "d", shape);
  }

  private static String move(double x, double y) {
    return "M" + number(x) + " " + number(y);
  }

  private static String line(double x, double y) {
    return " L" + number(x) + " " + number(y);
  }

  private static String curve(double x1, double y1, double x, double y) {
    return " Q" + number(x1) + " " + number(y1) + " " + number(x) + " " + number(y);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}

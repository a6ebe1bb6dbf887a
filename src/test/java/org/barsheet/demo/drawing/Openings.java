package org.barsheet.demo.drawing;

import static org.barsheet.demo.drawing.Shapes.box;
import static org.barsheet.demo.drawing.Shapes.disc;
import static org.barsheet.demo.drawing.Shapes.polygon;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import org.barsheet.demo.drawing.Scene.Instrument;

/** Draws the openings: the hole, who is in it, and the flap as far open as it is. */
final class Openings {

  /** Drawn a little past a right angle, so that an open flap can be seen from the front. */
  private static final double WIDEST_RADIANS = Math.toRadians(112);

  private final Paper paper;
  private final Scene scene;

  Openings(Paper paper, Scene scene) {
    this.paper = paper;
    this.scene = scene;
  }

  void draw(Flap flap) {
    double open = scene.openness(flap);
    frame(flap);
    if (open > 0) {
      hole(flap);
    }
    switch (flap.way) {
      case LEFT -> sideways(flap, flap.left, 1, open);
      case RIGHT -> sideways(flap, flap.left + flap.width, -1, open);
      case TOP -> upwards(flap, flap.top, 1, open);
      case BOTTOM -> upwards(flap, flap.top + flap.height, -1, open);
      case SLIDES_RIGHT -> slid(flap, flap.width * open, 0);
      case SLIDES_UP -> slid(flap, 0, -flap.height * open);
    }
  }

  private void frame(Flap flap) {
    double rim = 0.12;
    paper.cut(
        box(flap.left - rim, flap.top - rim, flap.width + 2 * rim, flap.height + 2 * rim),
        Ink.PAPER);
  }

  private void hole(Flap flap) {
    Shape hole = box(flap.left, flap.top, flap.width, flap.height);
    if (scene.isLit(flap)) {
      paper.bare(hole, Ink.GLOW);
      paper.sheer(box(flap.left, flap.top, flap.width, flap.height * 0.3), Ink.PALE_AMBER, 0.55);
    } else {
      paper.bare(hole, 0x1A1D26);
    }
    // The thickness of the card along the upper and left edge.
    paper.sheer(box(flap.left, flap.top, flap.width, 0.07), Ink.SHADE, 0.45);
    paper.sheer(box(flap.left, flap.top, 0.07, flap.height), Ink.SHADE, 0.3);
    Instrument instrument = scene.players().get(flap);
    if (instrument != null) {
      performer(flap, instrument);
    } else if (scene.isLit(flap)) {
      lamp(flap);
    }
  }

  private void lamp(Flap flap) {
    double x = flap.left + flap.width / 2;
    double foot = flap.top + flap.height;
    double size = Math.min(flap.width, flap.height);
    paper.bare(box(x - size * 0.14, foot - size * 0.3, size * 0.28, size * 0.3), Ink.AMBER);
    paper.bare(disc(x, foot - size * 0.46, size * 0.17), 0xFFF6DA);
    paper.sheer(disc(x, foot - size * 0.46, size * 0.3), 0xFFF6DA, 0.45);
  }

  /** A head, shoulders and an instrument against the light, within the hole's lower part. */
  private void performer(Flap flap, Instrument instrument) {
    double x = flap.left + flap.width / 2;
    double foot = flap.top + flap.height;
    double unit = Math.min(flap.width, flap.height * 0.75);
    double head = foot - unit * 0.78;
    int ink = scene.isLit(flap) ? Ink.NIGHT : 0x0D1018;
    paper.bare(disc(x, head, unit * 0.16), ink);
    paper.bare(
        polygon(
            x - unit * 0.36,
            foot,
            x - unit * 0.27,
            foot - unit * 0.5,
            x,
            foot - unit * 0.62,
            x + unit * 0.27,
            foot - unit * 0.5,
            x + unit * 0.36,
            foot),
        ink);
    instrument(instrument, x, head, foot, unit);
  }

  private void instrument(Instrument instrument, double x, double head, double foot, double unit) {
    int wood = Ink.RUST;
    double mouth = head + unit * 0.07;
    switch (instrument) {
      case FLUTE ->
          paper.bare(
              polygon(
                  x - unit * 0.08,
                  mouth - unit * 0.03,
                  x + unit * 0.48,
                  mouth + unit * 0.03,
                  x + unit * 0.48,
                  mouth + unit * 0.09,
                  x - unit * 0.08,
                  mouth + unit * 0.04),
              Ink.SLATE);
      case CLARINET ->
          paper.bare(
              polygon(
                  x + unit * 0.02,
                  mouth,
                  x + unit * 0.09,
                  mouth,
                  x + unit * 0.34,
                  foot - unit * 0.2,
                  x + unit * 0.22,
                  foot - unit * 0.16),
              wood);
      case HORN -> {
        paper.bare(disc(x + unit * 0.2, foot - unit * 0.3, unit * 0.24), Ink.AMBER);
        paper.bare(disc(x + unit * 0.2, foot - unit * 0.3, unit * 0.13), Ink.NIGHT);
      }
      case CELESTA ->
          paper.bare(box(x - unit * 0.46, foot - unit * 0.34, unit * 0.92, unit * 0.34), wood);
      case VIOLIN -> {
        paper.bare(new Ellipse2D.Double(x, mouth + unit * 0.05, unit * 0.34, unit * 0.17), wood);
        paper.bare(
            polygon(
                x + unit * 0.04,
                mouth + unit * 0.34,
                x + unit * 0.3,
                mouth - unit * 0.24,
                x + unit * 0.34,
                mouth - unit * 0.22,
                x + unit * 0.08,
                mouth + unit * 0.36),
            Ink.SHADE);
      }
      case CELLO -> {
        paper.bare(disc(x + unit * 0.14, foot - unit * 0.16, unit * 0.22), wood);
        paper.bare(disc(x + unit * 0.14, foot - unit * 0.42, unit * 0.15), wood);
        paper.bare(box(x + unit * 0.11, head - unit * 0.02, unit * 0.06, unit * 0.42), Ink.SHADE);
      }
    }
  }

  /** A flap on an upright hinge: the far edge comes toward us and grows taller. */
  private void sideways(Flap flap, double hinge, int toward, double open) {
    double angle = open * WIDEST_RADIANS;
    double far = hinge + toward * flap.width * Math.cos(angle);
    double lean = flap.height * 0.1 * Math.sin(angle);
    double foot = flap.top + flap.height;
    Shape leaf = polygon(hinge, flap.top, far, flap.top - lean, far, foot + lean, hinge, foot);
    paper.cut(leaf, flap.ink);
    boards(flap, hinge, far, lean);
    double knob = hinge + (far - hinge) * 0.84;
    paper.flat(disc(knob, flap.top + flap.height * 0.55, 0.07), Ink.PALE_AMBER);
  }

  private void boards(Flap flap, double hinge, double far, double lean) {
    for (double part : new double[] {0.34, 0.67}) {
      double x = hinge + (far - hinge) * part;
      paper.thread(
          new Line2D.Double(x, flap.top - lean * part, x, flap.top + flap.height + lean * part),
          Ink.SHADE,
          0.025);
    }
  }

  /** A flap on a level hinge: the free edge comes toward us and grows wider. */
  private void upwards(Flap flap, double hinge, int toward, double open) {
    double angle = open * Math.toRadians(75);
    double free = hinge + toward * flap.height * Math.cos(angle);
    double lean = flap.width * 0.1 * Math.sin(angle);
    double right = flap.left + flap.width;
    paper.cut(
        polygon(flap.left, hinge, right, hinge, right + lean, free, flap.left - lean, free),
        flap.ink);
    for (double part : new double[] {0.3, 0.6}) {
      double y = hinge + (free - hinge) * part;
      paper.thread(
          new Line2D.Double(flap.left - lean * part, y, right + lean * part, y), Ink.SHADE, 0.025);
    }
  }

  private void slid(Flap flap, double across, double down) {
    double left = flap.left + across;
    double top = flap.top + down;
    paper.cut(box(left, top, flap.width, flap.height), flap.ink);
    for (int bar = 1; bar < 4; bar++) {
      double x = left + flap.width * bar / 4;
      paper.thread(new Line2D.Double(x, top, x, top + flap.height), Ink.SHADE, 0.03);
    }
    for (double part : new double[] {0.22, 0.78}) {
      double y = top + flap.height * part;
      paper.thread(new Line2D.Double(left, y, left + flap.width, y), Ink.SHADE, 0.03);
    }
  }
}

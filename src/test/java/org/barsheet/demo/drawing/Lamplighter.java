package org.barsheet.demo.drawing;

import static org.barsheet.demo.drawing.Shapes.box;
import static org.barsheet.demo.drawing.Shapes.disc;
import static org.barsheet.demo.drawing.Shapes.polygon;

import java.awt.geom.Line2D;

/** The lamplighter: a coat, a flat hat and a pole with a spark. */
final class Lamplighter {

  private static final double FOOT = Houses.GROUND + 0.1;

  private final Paper paper;

  Lamplighter(Paper paper) {
    this.paper = paper;
  }

  void draw(double x, Scene.Pose pose) {
    switch (pose) {
      case WALKS -> {
        pole(x + 0.35, FOOT - 0.75, x - 0.45, FOOT - 2.6);
        legs(x);
        coat(x, FOOT);
      }
      case REACHES -> {
        pole(x - 0.3, FOOT - 0.95, x - 0.55, FOOT - 3.1);
        legs(x);
        coat(x, FOOT);
      }
      case SITS -> {
        pole(x + 0.75, FOOT + 0.05, x + 0.95, FOOT - 2.3);
        paper.cut(box(x - 0.1, FOOT - 0.75, 0.62, 0.24), Ink.NIGHT);
        paper.cut(box(x + 0.32, FOOT - 0.7, 0.2, 0.75), Ink.NIGHT);
        coat(x, FOOT - 0.1);
      }
    }
  }

  private void legs(double x) {
    paper.cut(
        polygon(x - 0.22, FOOT, x - 0.08, FOOT - 0.6, x + 0.06, FOOT - 0.6, x - 0.06, FOOT),
        Ink.NIGHT);
    paper.cut(
        polygon(x + 0.12, FOOT, x - 0.02, FOOT - 0.6, x + 0.14, FOOT - 0.6, x + 0.3, FOOT),
        Ink.NIGHT);
  }

  private void coat(double x, double foot) {
    paper.cut(
        polygon(
            x - 0.38,
            foot - 0.42,
            x - 0.2,
            foot - 1.35,
            x + 0.16,
            foot - 1.35,
            x + 0.36,
            foot - 0.42),
        Ink.RUST);
    paper.cut(disc(x, foot - 1.5, 0.22), Ink.PALE_AMBER);
    paper.cut(
        polygon(
            x - 0.36,
            foot - 1.58,
            x + 0.28,
            foot - 1.58,
            x + 0.2,
            foot - 1.86,
            x - 0.2,
            foot - 1.86),
        Ink.NIGHT);
  }

  private void pole(double x, double y, double tipX, double tipY) {
    paper.thread(new Line2D.Double(x, y, tipX, tipY), Ink.SHADE, 0.08);
    paper.sheer(disc(tipX, tipY, 0.3), Ink.GLOW, 0.35);
    paper.shining(disc(tipX, tipY, 0.12), Ink.GLOW);
  }
}

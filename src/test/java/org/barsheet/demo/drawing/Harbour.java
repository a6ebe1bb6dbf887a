package org.barsheet.demo.drawing;

import static org.barsheet.demo.drawing.Shapes.box;
import static org.barsheet.demo.drawing.Shapes.disc;
import static org.barsheet.demo.drawing.Shapes.polygon;
import static org.barsheet.demo.drawing.Shapes.waves;

import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;

/** Everything at the water: the lighthouse, the quay wall, the ferry, the sea. */
final class Harbour {

  private static final double WATER = 11.9;

  private final Paper paper;
  private final Scene scene;
  private final Openings openings;

  Harbour(Paper paper, Scene scene, Openings openings) {
    this.paper = paper;
    this.scene = scene;
    this.openings = openings;
  }

  void lighthouse() {
    beam();
    paper.cut(
        polygon(18.9, 12.6, 19.6, 10.9, 20.5, 10.1, 22.4, 10.0, 23.3, 10.9, 24.4, 12.6),
        Ink.DEEP_STONE);
    paper.cut(polygon(20.45, 10.3, 20.8, 4.3, 22.0, 4.3, 22.35, 10.3), Ink.PAPER);
    paper.flat(polygon(20.74, 5.3, 20.8, 4.4, 22.0, 4.4, 22.06, 5.3), Ink.RUST);
    paper.flat(polygon(20.5, 9.4, 20.57, 8.3, 22.23, 8.3, 22.3, 9.4), Ink.RUST);
    paper.cut(box(20.5, 4.15, 1.8, 0.25), Ink.DEEP_TEAL);
    paper.cut(box(20.7, 2.85, 1.4, 1.35), Ink.SLATE);
    paper.cut(polygon(20.55, 2.9, 21.4, 1.95, 22.25, 2.9), Ink.RUST);
    paper.cut(disc(21.4, 1.9, 0.13), Ink.AMBER);
    openings.draw(Flap.KEEPERS_WINDOW);
    openings.draw(Flap.LANTERN);
  }

  private void beam() {
    double open = scene.openness(Flap.LANTERN);
    if (open > 0 && scene.isLit(Flap.LANTERN)) {
      paper.sheer(polygon(21.4, 3.4, 0, -1.2, 0, 4.6, 21.4, 3.75), Ink.GLOW, 0.30 * open);
      paper.sheer(polygon(21.4, 3.45, 0, 0.2, 0, 3.2, 21.4, 3.7), Ink.GLOW, 0.22 * open);
    }
  }

  void quay() {
    paper.cut(
        polygon(-0.5, Houses.GROUND - 0.1, 17.9, Houses.GROUND - 0.1, 18.3, 14, -0.5, 14),
        Ink.STONE);
    paper.cut(polygon(-0.5, 11.0, 17.95, 11.0, 18.3, 14, -0.5, 14), Ink.DEEP_STONE);
    blocks();
    openings.draw(Flap.HATCH);
    ladder(10.4);
    for (double x : new double[] {0.9, 6.9, 12.9, 17.0}) {
      bollard(x);
    }
    pools();
  }

  private void blocks() {
    for (int row = 0; row < 2; row++) {
      double y = 11.35 + row * 0.45;
      paper.thread(new Line2D.Double(-0.5, y, 18.05, y), Ink.SHADE, 0.02);
      for (double x = row * 0.7; x < 17.9; x += 1.4) {
        paper.thread(new Line2D.Double(x, y, x, y - 0.4), Ink.SHADE, 0.02);
      }
    }
  }

  private void ladder(double x) {
    paper.thread(new Line2D.Double(x, 10.8, x, 12.4), Ink.SHADE, 0.07);
    paper.thread(new Line2D.Double(x + 0.5, 10.8, x + 0.5, 12.4), Ink.SHADE, 0.07);
    for (double y = 11.1; y < 12.4; y += 0.28) {
      paper.thread(new Line2D.Double(x, y, x + 0.5, y), Ink.SHADE, 0.06);
    }
  }

  private void bollard(double x) {
    double foot = Houses.GROUND + 0.15;
    paper.cut(
        polygon(x - 0.2, foot, x - 0.15, foot - 0.6, x + 0.15, foot - 0.6, x + 0.2, foot),
        Ink.SHADE);
    paper.cut(Shapes.cloud(x - 0.3, foot - 0.78, 0.6, 0.24), Ink.SHADE);
  }

  /** Light from doors at the ground, on the stones and down the wall. */
  private void pools() {
    for (Flap flap : Flap.values()) {
      boolean door = flap.top > 7 && flap.top < 10;
      double open = scene.openness(flap);
      if (door && open > 0.2 && scene.isLit(flap)) {
        double right = flap.left + flap.width;
        paper.sheer(
            polygon(
                flap.left,
                Houses.GROUND - 0.1,
                right,
                Houses.GROUND - 0.1,
                right + 0.7,
                11.95,
                flap.left - 0.7,
                11.95),
            Ink.GLOW,
            0.34 * open);
      }
    }
  }

  void sea() {
    double level = WATER - scene.tide();
    paper.cut(waves(-1, 25, level - 0.25, 14.5, 1.3, 0.2, 0.32), Ink.SLATE);
    reflections(level);
    if (scene.ferry() >= 0) {
      ferry(scene.ferry(), level + 0.15);
    }
    paper.cut(waves(-1, 25, level + 0.35, 14.5, 1.5, 0.8, 0.36), Ink.TEAL);
    paper.cut(waves(-1, 25, level + 0.95, 14.5, 1.8, 0.3, 0.42), Ink.NIGHT);
  }

  /** What is open above throws a strip of light on the water. */
  private void reflections(double level) {
    for (Flap flap : Flap.values()) {
      double open = scene.openness(flap);
      if (open > 0.2 && flap != Flap.HATCH && scene.isLit(flap)) {
        for (int strip = 0; strip < 3; strip++) {
          double width = flap.width * (0.9 - 0.2 * strip);
          double left = flap.left + (flap.width - width) / 2 + (strip % 2 == 0 ? 0.12 : -0.12);
          paper.sheer(
              Shapes.cloud(left, level + 0.02 + 0.12 * strip, width, 0.09), Ink.GLOW, 0.75 * open);
        }
      }
    }
  }

  private void ferry(double bow, double level) {
    for (int puff = 0; puff < 4; puff++) {
      paper.cut(
          disc(bow + 3.05 + puff * 0.75, level - 3.7 - puff * 0.42, 0.26 + 0.1 * puff), Ink.PAPER);
    }
    paper.cut(box(bow + 1.1, level - 3.9, 0.1, 2.2), Ink.DEEP_RUST);
    paper.cut(
        polygon(bow + 1.2, level - 3.8, bow + 2.0, level - 3.5, bow + 1.2, level - 3.2), Ink.AMBER);
    paper.cut(box(bow + 2.7, level - 3.4, 0.75, 1.5), Ink.RUST);
    paper.flat(box(bow + 2.7, level - 3.1, 0.75, 0.3), Ink.PAPER);
    paper.cut(box(bow + 1.6, level - 2.2, 3.0, 0.9), Ink.PAPER);
    paper.cut(
        polygon(
            bow,
            level - 1.5,
            bow + 5.6,
            level - 1.35,
            bow + 5.1,
            level + 0.5,
            bow + 0.8,
            level + 0.5),
        Ink.NIGHT);
    paper.flat(
        polygon(
            bow + 0.1,
            level - 1.3,
            bow + 5.55,
            level - 1.15,
            bow + 5.5,
            level - 0.95,
            bow + 0.2,
            level - 1.1),
        Ink.AMBER);
    for (int window = 0; window < 4; window++) {
      paper.bare(box(bow + 1.85 + window * 0.7, level - 1.98, 0.4, 0.4), Ink.GLOW);
    }
  }

  /** The sound of the ferry's horn, as rings of paper. */
  void hornRings(double bow) {
    double x = bow + 3.05;
    double y = WATER - scene.tide() - 3.35;
    for (int ring = 1; ring <= 3; ring++) {
      double radius = 0.6 + 0.55 * ring;
      paper.thread(
          new Arc2D.Double(x - radius, y - radius, 2 * radius, 2 * radius, 120, 100, Arc2D.OPEN),
          Ink.PAPER,
          0.11);
    }
  }
}

package org.barsheet.demo.drawing;

import static org.barsheet.demo.drawing.Shapes.box;
import static org.barsheet.demo.drawing.Shapes.disc;
import static org.barsheet.demo.drawing.Shapes.polygon;

import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;

/** The five fronts along the quay, from the chandler's to the customs house. */
final class Houses {

  /** Where the fronts meet the stones. */
  static final double GROUND = 10.8;

  private final Paper paper;
  private final Openings openings;

  Houses(Paper paper, Openings openings) {
    this.paper = paper;
    this.openings = openings;
  }

  void draw() {
    customsHouse();
    harbourOffice();
    netLoft();
    bakery();
    chandlery();
  }

  private void chandlery() {
    chimney(1.0, 4.0);
    paper.cut(polygon(0.3, 6.0, 2.25, 4.1, 4.2, 6.0), Ink.DEEP_TEAL);
    paper.cut(box(0.5, 5.8, 3.5, GROUND - 5.8), Ink.TEAL);
    pane(1.9, 4.9, 0.7, 0.7);
    pane(0.85, 6.1, 0.7, 0.7);
    pane(2.95, 6.1, 0.7, 0.7);
    anchor(3.45, 7.9);
    openings.draw(Flap.CHANDLERS_LAMP);
    step(1.4, 1.7);
  }

  private void bakery() {
    chimney(6.2, 3.0);
    paper.cut(
        polygon(
            4.0, GROUND, 4.0, 5.2, 4.5, 5.2, 4.5, 4.4, 5.0, 4.4, 5.0, 3.7, 6.0, 3.7, 6.0, 4.4, 6.5,
            4.4, 6.5, 5.2, 7.0, 5.2, 7.0, GROUND),
        Ink.AMBER);
    pane(5.15, 4.4, 0.7, 0.9);
    pane(4.4, 5.8, 0.75, 0.85);
    pane(5.85, 5.8, 0.75, 0.85);
    pretzel(6.68, 7.2);
    openings.draw(Flap.BAKERS_LAMP);
    step(4.7, 1.7);
  }

  private void netLoft() {
    paper.cut(polygon(6.8, 5.1, 9.3, 2.9, 11.8, 5.1), Ink.NIGHT);
    paper.cut(box(7.0, 4.9, 4.6, GROUND - 4.9), Ink.SLATE);
    pane(8.95, 3.75, 0.7, 0.75);
    hoist();
    openings.draw(Flap.LOFT_SHUTTER_LEFT);
    openings.draw(Flap.LOFT_SHUTTER_RIGHT);
    paper.cut(box(8.7, 7.92, 2.8, 0.14), Ink.DEEP_STONE);
    openings.draw(Flap.HOIST_DOOR);
    openings.draw(Flap.SAILMAKERS_LAMP);
    step(7.3, 1.5);
  }

  /** A beam under the gable with a rope and a bale. */
  private void hoist() {
    paper.cut(box(9.15, 3.1, 0.22, 0.5), Ink.DEEP_RUST);
    paper.thread(new Line2D.Double(9.26, 3.6, 9.26, 4.75), Ink.PAPER, 0.05);
    paper.cut(box(9.02, 4.7, 0.5, 0.42), Ink.PALE_AMBER);
    paper.thread(new Line2D.Double(9.27, 4.7, 9.27, 5.12), Ink.RUST, 0.05);
  }

  private void harbourOffice() {
    paper.cut(box(11.6, 2.6, 2.4, GROUND - 2.6), Ink.PALE_TEAL);
    paper.cut(box(11.4, 2.4, 2.8, 0.45), Ink.DEEP_TEAL);
    paper.cut(polygon(12.3, 2.4, 12.8, 1.2, 13.3, 2.4), Ink.DEEP_TEAL);
    paper.cut(disc(12.8, 3.45, 0.42), Ink.PAPER);
    paper.thread(new Line2D.Double(12.8, 3.45, 12.8, 3.15), Ink.SHADE, 0.06);
    paper.thread(new Line2D.Double(12.8, 3.45, 13.02, 3.56), Ink.SHADE, 0.06);
    paper.cut(polygon(11.7, 10.8, 11.7, 8.3, 12.8, 7.6, 13.9, 8.3, 13.9, 10.8), Ink.STONE);
    openings.draw(Flap.QUAY_GATE);
    openings.draw(Flap.OFFICE_SHUTTER);
  }

  private void customsHouse() {
    chimney(15.9, 3.9);
    paper.cut(polygon(13.8, 6.1, 14.7, 4.7, 16.3, 4.7, 17.2, 6.1), Ink.DEEP_RUST);
    paper.cut(box(14.0, 5.9, 3.0, GROUND - 5.9), Ink.RUST);
    for (double left : new double[] {14.3, 15.2, 16.1}) {
      pane(left, 6.2, 0.55, 0.7);
    }
    openings.draw(Flap.CUSTOMS_LAMP);
    step(14.5, 1.7);
  }

  private void chimney(double left, double top) {
    paper.cut(box(left, top, 0.5, 1.8), Ink.DEEP_RUST);
    paper.cut(box(left - 0.08, top - 0.05, 0.66, 0.2), Ink.STONE);
  }

  /** A little window that never opens. */
  private void pane(double left, double top, double width, double height) {
    paper.cut(box(left, top, width, height), Ink.PAPER);
    paper.flat(box(left + 0.08, top + 0.08, width - 0.16, height - 0.16), Ink.NIGHT);
    double middle = left + width / 2;
    paper.thread(new Line2D.Double(middle, top, middle, top + height), Ink.PAPER, 0.05);
    paper.thread(
        new Line2D.Double(left, top + height / 2, left + width, top + height / 2), Ink.PAPER, 0.05);
  }

  private void step(double left, double width) {
    paper.cut(box(left, GROUND - 0.22, width, 0.24), Ink.STONE);
  }

  private void anchor(double x, double y) {
    paper.cut(disc(x, y - 0.05, 0.4), Ink.PAPER);
    paper.thread(new Line2D.Double(x, y - 0.3, x, y + 0.2), Ink.DEEP_TEAL, 0.07);
    paper.thread(new Line2D.Double(x - 0.14, y - 0.15, x + 0.14, y - 0.15), Ink.DEEP_TEAL, 0.07);
    paper.thread(
        new Arc2D.Double(x - 0.2, y - 0.22, 0.4, 0.42, 200, 140, Arc2D.OPEN), Ink.DEEP_TEAL, 0.07);
  }

  private void pretzel(double x, double y) {
    paper.thread(new Line2D.Double(x, y - 0.6, x, y - 0.25), Ink.SHADE, 0.04);
    paper.thread(disc(x - 0.12, y, 0.16), Ink.DEEP_RUST, 0.09);
    paper.thread(disc(x + 0.12, y, 0.16), Ink.DEEP_RUST, 0.09);
    paper.thread(
        new Arc2D.Double(x - 0.25, y - 0.2, 0.5, 0.5, 200, 140, Arc2D.OPEN), Ink.DEEP_RUST, 0.09);
  }
}

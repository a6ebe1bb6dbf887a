package org.barsheet.demo.drawing;

/** The twelve openings of the artwork, in squares, as the plan gives them. */
public enum Flap {
  CHANDLERS_LAMP(1.5, 7.2, 1.5, 2.2, Way.LEFT, Ink.DEEP_TEAL),
  BAKERS_LAMP(4.8, 7.2, 1.5, 2.2, Way.LEFT, Ink.DEEP_RUST),
  SAILMAKERS_LAMP(7.4, 7.9, 1.3, 2, Way.RIGHT, Ink.NIGHT),
  CUSTOMS_LAMP(14.6, 7.3, 1.5, 2.2, Way.RIGHT, Ink.DEEP_RUST),
  LOFT_SHUTTER_LEFT(7.6, 5.4, 1.5, 1.4, Way.TOP, Ink.PALE_TEAL),
  LOFT_SHUTTER_RIGHT(9.5, 5.4, 1.5, 1.4, Way.TOP, Ink.PALE_TEAL),
  HOIST_DOOR(8.9, 8.2, 1.3, 2.6, Way.SLIDES_RIGHT, Ink.AMBER),
  OFFICE_SHUTTER(12, 4.2, 1.6, 1.6, Way.TOP, Ink.PALE_AMBER),
  QUAY_GATE(11.95, 8.4, 1.7, 2.4, Way.SLIDES_UP, Ink.DEEP_STONE),
  HATCH(3, 10.95, 1, 0.7, Way.BOTTOM, Ink.RUST),
  KEEPERS_WINDOW(21, 6.4, 0.8, 1.2, Way.LEFT, Ink.SLATE),
  LANTERN(20.85, 3, 1.1, 1.1, Way.RIGHT, Ink.SLATE);

  final double left;
  final double top;
  final double width;
  final double height;
  final Way way;
  final int ink;

  Flap(double left, double top, double width, double height, Way way, int ink) {
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
    this.way = way;
    this.ink = ink;
  }

  /** Left edge, top edge, width and height, in squares. */
  public double[] rectangle() {
    return new double[] {left, top, width, height};
  }

  /** The edge of the hinge, or where it slides. */
  enum Way {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM,
    SLIDES_RIGHT,
    SLIDES_UP
  }
}

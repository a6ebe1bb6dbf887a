package org.barsheet.workbook;


/** The lines around a cell. */
record Edges(Line top, Line right, Line bottom, Line left) {

  static final Edges NONE = new Edges(Line.NONE, Line.NONE, Line.NONE, Line.NONE);

  static Edges box(Line line) {
    return new Edges(line, line, line, line);
  }

  Edges top(Line line) {
    return new Edges(line, right, bottom, left);
  }

  Edges right(Line line) {
    return new Edges(top, line, bottom, left);
  }

  Edges bottom(Line line) {
    return new Edges(top, right, line, left);
  }

  Edges left(Line line) {
    return new Edges(top, right, bottom, line);
  }
}

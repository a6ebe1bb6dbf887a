package org.barsheet.workbook.pen;

/** The lines around a cell. */
public record Edges(Line top, Line right, Line bottom, Line left) {

  public static final Edges NONE = new Edges(Line.NONE, Line.NONE, Line.NONE, Line.NONE);

  public static Edges box(Line line) {
    return new Edges(line, line, line, line);
  }

  public Edges top(Line line) {
    return new Edges(line, right, bottom, left);
  }

  public Edges right(Line line) {
    return new Edges(top, line, bottom, left);
  }

  public Edges bottom(Line line) {
    return new Edges(top, right, line, left);
  }

  public Edges left(Line line) {
    return new Edges(top, right, bottom, line);
  }
}

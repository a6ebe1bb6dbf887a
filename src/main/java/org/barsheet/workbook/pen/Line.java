package org.barsheet.workbook.pen;

import org.apache.poi.ss.usermodel.BorderStyle;

/** A line along the edge of a cell. */
public enum Line {
  NONE(BorderStyle.NONE, Ink.INK),
  /** Between cells. */
  HAIR(BorderStyle.THIN, Ink.HAIRLINE),
  /** Beats in a bar. */
  DOTTED(BorderStyle.DOTTED, Ink.HAIRLINE),
  /** Boxes. */
  THIN(BorderStyle.THIN, Ink.INK),
  /** Where something goes on from the line before. */
  DASHED(BorderStyle.DASHED, Ink.INK),
  /** Seconds, cuts, the frame of a table. */
  HEAVY(BorderStyle.MEDIUM, Ink.INK),
  /** A cut. */
  CUT(BorderStyle.THICK, Ink.INK),
  /** Under an occurrence. */
  TIDE(BorderStyle.MEDIUM, Ink.TIDE);

  private final BorderStyle style;
  private final Ink ink;

  Line(BorderStyle style, Ink ink) {
    this.style = style;
    this.ink = ink;
  }

  BorderStyle style() {
    return style;
  }

  Ink ink() {
    return ink;
  }
}

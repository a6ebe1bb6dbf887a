package org.barsheet.movie;

import java.awt.Color;
import java.awt.Graphics2D;

/**
 * A corner of the strip that programs read: 6 rows of 8 cells, white for 1 and black for 0, from
 * the top left. 24 bits are the frame (two's complement, so that frames before the film can be
 * told), 16 the shot from 1, 8 their sum, turned about so that neither all black nor all white is a
 * code.
 */
final class CodeCells {

  static final int COLUMNS = 8;
  static final int ROWS = 6;

  private static final int BITS = COLUMNS * ROWS;
  private static final int CHECK = 0x5A;

  private CodeCells() {}

  /** The bits of a frame, the first one highest. */
  static long bits(long frame, int shot) {
    long told = (frame & 0xFFFFFF) << 16 | (shot & 0xFFFF);
    long sum = 0;
    for (int shift = 0; shift < BITS - 8; shift += 8) {
      sum += told >> shift & 0xFF;
    }
    return told << 8 | ((sum ^ CHECK) & 0xFF);
  }

  /** Side of a cell in a strip, in pixels. */
  static int side(Sizes sizes) {
    return Math.max(1, (sizes.strip() - 4) / ROWS);
  }

  /** The left edge of the cells in the frame. */
  static int left(Sizes sizes) {
    int side = side(sizes);
    return sizes.width() - COLUMNS * side - (sizes.strip() - ROWS * side) / 2;
  }

  /** The top edge of the cells in the frame. */
  static int top(Sizes sizes) {
    return sizes.height() + (sizes.strip() - ROWS * side(sizes)) / 2;
  }

  static void draw(Graphics2D pen, Sizes sizes, long frame, int shot) {
    long bits = bits(frame, shot);
    int side = side(sizes);
    for (int cell = 0; cell < BITS; cell++) {
      pen.setColor((bits >> (BITS - 1 - cell) & 1) == 1 ? Color.WHITE : Color.BLACK);
      pen.fillRect(
          left(sizes) + cell % COLUMNS * side, top(sizes) + cell / COLUMNS * side, side, side);
    }
  }
}

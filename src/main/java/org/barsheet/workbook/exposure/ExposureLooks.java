package org.barsheet.workbook.exposure;

import org.barsheet.clock.Timecode;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;

/** How the rows of the exposure sheet look. */
final class ExposureLooks {

  /** The letters of a frame. */
  static final Look LETTERS = Look.BODY.size(8);

  /** A line that says how many frames are folded away. */
  static final Look SUMMARY =
      LETTERS.in(Ink.PENCIL).edged(new Edges(Line.HAIR, Line.NONE, Line.HAIR, Line.NONE));

  static final Look SUMMARY_HOLD = holdLine(SUMMARY);

  /** The name of a shot. */
  static final Look SHOT = Look.BODY.size(11).inBold().edged(Edges.NONE.top(Line.HEAVY));

  /** What is to know of a shot. */
  static final Look DETAILS = LETTERS.in(Ink.PENCIL).edged(Edges.NONE.bottom(Line.THIN));

  private ExposureLooks() {}

  /**
   * The line down a hold. Its letters are as high as the row, so that the lines of neighboring rows
   * meet.
   */
  static Look hold(Ground ground) {
    return holdLine(ground.look(LETTERS));
  }

  private static Look holdLine(Look look) {
    return look.size(10).inBold().in(Ink.INK).centered();
  }

  /** A cell beside a frame that people fill in. */
  static Look toFillIn(Ground ground) {
    return LETTERS
        .on(Ink.BAND)
        .edged(Edges.box(Line.HAIR).top(ground.top() == Line.NONE ? Line.HAIR : ground.top()));
  }

  /** What the cells of one frame have in common. */
  record Ground(Ink fill, Line top, boolean lands) {

    /** The ground of a frame: a band every half second, a heavy line at each second. */
    static Ground of(Timecode timecode, boolean lands, boolean firstOfShot) {
      boolean second = timecode.frames() == 0 && !firstOfShot;
      boolean band = timecode.frames() * 2 / timecode.rate().nominal() == 1;
      Ink fill = lands ? Ink.LAMP : band ? Ink.BAND : Ink.PAPER;
      return new Ground(fill, second ? Line.HEAVY : Line.NONE, lands);
    }

    Look look(Look of) {
      Look grounded = of.on(fill).edged(Edges.NONE.top(top).left(Line.HAIR).right(Line.HAIR));
      return lands ? grounded.inBold().in(Ink.INK) : grounded;
    }
  }
}

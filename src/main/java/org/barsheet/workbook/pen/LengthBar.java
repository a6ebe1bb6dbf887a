package org.barsheet.workbook.pen;

/** Lengths drawn to scale as a row of blocks, the longest filling its cell. */
public final class LengthBar {

  public static final Look LOOK = Look.BODY.size(8).edged(Edges.NONE.bottom(Line.HAIR));

  /** Width of a block in Liberation Sans and Arial, as a share of the size of its letters. */
  private static final double BLOCK_WIDTH = 0.708;

  private final long longest;
  private final int halfBlocks;

  /**
   * Bars for a column.
   *
   * @param longest the greatest length, more than 0
   * @param points width of the column
   */
  public LengthBar(long longest, double points) {
    this.longest = longest;
    double blocks = (points - TextWidth.PADDING) / (BLOCK_WIDTH * LOOK.points());
    this.halfBlocks = (int) (2 * blocks);
  }

  /** A length as blocks and half blocks, at least half a block. */
  public String of(long length) {
    int halves = (int) Math.max(1, Math.round((double) halfBlocks * length / longest));
    return Signs.BLOCK.repeat(halves / 2) + (halves % 2 == 1 ? Signs.HALF_BLOCK : "");
  }
}

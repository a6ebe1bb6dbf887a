package org.barsheet.artwork;

/**
 * A straight edge of paper as it lies under the camera.
 *
 * @param kind what it belongs to
 * @param from one end
 * @param to the other end
 */
public record PaperEdge(Kind kind, Point from, Point to) {

  /** What an edge belongs to. */
  public enum Kind {
    /** The hole in the table's plane. */
    HOLE,
    /** What covers it, all edges but the free one. */
    COVER,
    /** The edge that a hand sets. */
    FREE
  }

  /**
   * A point of the model in millimeters.
   *
   * @param right from the artwork's left edge, at the model's size
   * @param down from its top edge
   * @param up above the table
   */
  public record Point(double right, double down, double up) {}
}

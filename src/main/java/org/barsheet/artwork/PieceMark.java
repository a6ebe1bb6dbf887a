package org.barsheet.artwork;

import java.util.List;
import org.barsheet.plan.Rect;

/**
 * A straight line of a piece, or a box or point told by a diagonal.
 *
 * @param kind what it is for
 * @param fromX millimeters right of the hole's top left corner
 * @param fromY millimeters below it
 * @param toX the same of its other end
 * @param toY the same of its other end
 */
public record PieceMark(Kind kind, double fromX, double fromY, double toX, double toY) {

  /** What a line tells the hand that holds the blade. */
  public enum Kind {
    /** Cut through. */
    CUT,
    /** Cut out of the sheet along it: the outside of a piece. */
    TRIM,
    /** Crease, never cut. */
    CREASE,
    /** The inner edge of a rail that a shutter slides along. */
    RAIL,
    /** What lies behind or in front: not cut on this piece. */
    HIDDEN,
    /** Where a thread leaves the free edge: a point. */
    THREAD,
    /** Where putty goes: the diagonal of a box. */
    PUTTY
  }

  /** The four sides of a rectangle, from its top left corner clockwise. */
  static List<PieceMark> around(Kind kind, Rect rect) {
    double right = rect.left() + rect.width();
    double bottom = rect.top() + rect.height();
    return List.of(
        new PieceMark(kind, rect.left(), rect.top(), right, rect.top()),
        new PieceMark(kind, right, rect.top(), right, bottom),
        new PieceMark(kind, right, bottom, rect.left(), bottom),
        new PieceMark(kind, rect.left(), bottom, rect.left(), rect.top()));
  }
}

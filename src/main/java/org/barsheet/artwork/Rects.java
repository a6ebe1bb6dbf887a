package org.barsheet.artwork;

import java.util.List;
import org.barsheet.plan.Rect;

/** What rectangles of the artwork have in common. */
public final class Rects {

  /** What shares less than this, in squares, only touches: room for rounding. */
  private static final double TOUCH = 1e-6;

  private Rects() {}

  /** Width of what two rectangles share; 0 or less where they do not overlap. */
  public static double sharedWide(Rect one, Rect other) {
    return shared(one.left(), one.width(), other.left(), other.width());
  }

  /** Height of what two rectangles share; 0 or less where they do not overlap. */
  public static double sharedHigh(Rect one, Rect other) {
    return shared(one.top(), one.height(), other.top(), other.height());
  }

  private static double shared(double from, double length, double otherFrom, double otherLength) {
    return Math.min(from + length, otherFrom + otherLength) - Math.max(from, otherFrom);
  }

  /** Whether two rectangles overlap; to touch is not enough. */
  public static boolean meet(Rect one, Rect other) {
    return sharedWide(one, other) > TOUCH && sharedHigh(one, other) > TOUCH;
  }

  /** The same rectangle further to the right and further down. */
  public static Rect moved(Rect rect, double right, double down) {
    return new Rect(rect.left() + right, rect.top() + down, rect.width(), rect.height());
  }

  /** The smallest rectangle that holds all of some, at least one. */
  public static Rect around(List<Rect> rects) {
    double left = rects.stream().mapToDouble(Rect::left).min().orElseThrow();
    double top = rects.stream().mapToDouble(Rect::top).min().orElseThrow();
    double right = rects.stream().mapToDouble(r -> r.left() + r.width()).max().orElseThrow();
    double bottom = rects.stream().mapToDouble(r -> r.top() + r.height()).max().orElseThrow();
    return new Rect(left, top, right - left, bottom - top);
  }

  /**
   * The smallest rectangle of a shape that holds another one, about the same middle.
   *
   * @param highPerWide height for each unit of width
   */
  public static Rect shaped(Rect rect, double highPerWide) {
    double width = Math.max(rect.width(), rect.height() / highPerWide);
    double height = width * highPerWide;
    return new Rect(
        rect.left() + (rect.width() - width) / 2,
        rect.top() + (rect.height() - height) / 2,
        width,
        height);
  }
}

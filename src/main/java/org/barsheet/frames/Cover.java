package org.barsheet.frames;

import java.util.List;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Rect;

/**
 * What covers an opening at one step of its movement, as the camera above sees it.
 *
 * @param outline polygons in squares of the artwork; where two overlap, there is a hole
 * @param solid how much of it hides what lies under it, 0 to 1
 * @param height how high over the paper it stands, 0 to 1
 */
public record Cover(List<List<Point>> outline, double solid, double height) {

  /** A flap's free edge stands nearer to the camera and looks so much longer at a right angle. */
  private static final double NEARER = 0.16;

  /** What is left of a piece that has been lifted off, or of the dark before a lamp. */
  private static final double LEFT_OVER = 0.15;

  private static final double LIFTED_LARGER = 0.12;

  public Cover {
    outline = outline.stream().map(List::copyOf).toList();
  }

  /** A corner, in squares of the artwork. */
  public record Point(double x, double y) {}

  /** A flap that has been turned so far about its hinge. */
  static Cover flap(Rect hole, Side hinge, double degrees) {
    double angle = StrictMath.toRadians(degrees);
    double reach = StrictMath.cos(angle);
    double sine = StrictMath.sin(angle);
    return new Cover(List.of(flapCorners(hole, hinge, reach, NEARER * sine)), 1, sine);
  }

  private static List<Point> flapCorners(Rect hole, Side hinge, double reach, double more) {
    double left = hole.left();
    double top = hole.top();
    double right = left + hole.width();
    double bottom = top + hole.height();
    boolean upright = hinge == Side.LEFT || hinge == Side.RIGHT;
    double grown = (upright ? hole.height() : hole.width()) * more / 2;
    return switch (hinge) {
      case LEFT, RIGHT -> {
        double edge = hinge == Side.LEFT ? left : right;
        double free = edge + (hinge == Side.LEFT ? 1 : -1) * hole.width() * reach;
        yield List.of(
            new Point(edge, top),
            new Point(free, top - grown),
            new Point(free, bottom + grown),
            new Point(edge, bottom));
      }
      case TOP, BOTTOM -> {
        double edge = hinge == Side.TOP ? top : bottom;
        double free = edge + (hinge == Side.TOP ? 1 : -1) * hole.height() * reach;
        yield List.of(
            new Point(left, edge),
            new Point(left - grown, free),
            new Point(right + grown, free),
            new Point(right, edge));
      }
    };
  }

  /** A shutter that has gone so many squares to one side. */
  static Cover shutter(Rect hole, Side toward, double way) {
    double right = toward == Side.LEFT ? -way : toward == Side.RIGHT ? way : 0;
    double down = toward == Side.TOP ? -way : toward == Side.BOTTOM ? way : 0;
    Rect moved = new Rect(hole.left() + right, hole.top() + down, hole.width(), hole.height());
    return new Cover(List.of(box(moved)), 1, 0.1);
  }

  /** A hole that has grown from its middle. */
  static Cover iris(Rect hole, double share) {
    List<Point> whole = box(hole);
    double width = hole.width() * share;
    double height = hole.height() * share;
    double left = hole.left() + (hole.width() - width) / 2;
    double top = hole.top() + (hole.height() - height) / 2;
    return new Cover(List.of(whole, box(left, top, width, height)), 1, 0);
  }

  /** A piece on its way up to the camera. */
  static Cover lifted(Rect hole, double share) {
    double grown = LIFTED_LARGER * share;
    List<Point> larger =
        box(
            hole.left() - hole.width() * grown / 2,
            hole.top() - hole.height() * grown / 2,
            hole.width() * (1 + grown),
            hole.height() * (1 + grown));
    return new Cover(List.of(larger), 1 - (1 - LEFT_OVER) * share, share);
  }

  /** The dark that a lamp drives out. */
  static Cover dark(Rect hole, double share) {
    return new Cover(List.of(box(hole)), 1 - (1 - LEFT_OVER) * share, 0);
  }

  private static List<Point> box(Rect rect) {
    return box(rect.left(), rect.top(), rect.width(), rect.height());
  }

  private static List<Point> box(double left, double top, double width, double height) {
    return List.of(
        new Point(left, top),
        new Point(left + width, top),
        new Point(left + width, top + height),
        new Point(left, top + height));
  }
}

package org.barsheet.photographs;

import java.util.List;
import java.util.OptionalDouble;
import org.barsheet.artwork.Measure;
import org.barsheet.photographs.PlannedSequence.Moving;
import org.barsheet.photographs.Quad.Corner;
import org.barsheet.pixels.Box;
import org.barsheet.pixels.HoleMeter.Edges;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Rect;

/**
 * Where a hole lies in a photograph, and how much of it the camera sees uncovered when its flap
 * stands at an amount. What stands up from the table looks larger and farther from the picture's
 * middle, by {@code d/(d − h)} (intercept theorem).
 */
final class HoleGeometry {

  private final Moving moving;
  private final int width;
  private final int height;
  private final Box hole;
  private final double millimetersPerPixel;

  private HoleGeometry(Moving moving, int width, int height, Box hole, double millimetersPerPixel) {
    this.moving = moving;
    this.width = width;
    this.height = height;
    this.hole = hole;
    this.millimetersPerPixel = millimetersPerPixel;
  }

  /**
   * As the plan says it. A photograph of another shape than the view is wider or higher about its
   * middle.
   *
   * @param view what the camera sees in squares
   * @param width of the photographs in pixels
   * @param height of the photographs in pixels
   */
  static HoleGeometry planned(Moving moving, Rect view, int width, int height) {
    double pixels = pixelsPerSquare(view, width, height);
    Rect rect = moving.opening().rect();
    double middleX = view.left() + view.width() / 2;
    double middleY = view.top() + view.height() / 2;
    double left = width / 2.0 + (rect.left() - middleX) * pixels;
    double top = height / 2.0 + (rect.top() - middleY) * pixels;
    Box hole = new Box(left, top, left + rect.width() * pixels, top + rect.height() * pixels);
    return new HoleGeometry(moving, width, height, hole, moving.squareMillimeters() / pixels);
  }

  /** Pixels of a photograph to a square of the artwork. */
  static double pixelsPerSquare(Rect view, int width, int height) {
    return Math.min(width / view.width(), height / view.height());
  }

  /** The same with the hole where the photographs show it. */
  HoleGeometry at(Box found) {
    double scale = hole.width() * hole.height() / (found.width() * found.height());
    return new HoleGeometry(moving, width, height, found, millimetersPerPixel * Math.sqrt(scale));
  }

  Box hole() {
    return hole;
  }

  double millimetersPerPixel() {
    return millimetersPerPixel;
  }

  /** Size of the hole in pixels, in the direction in which it is uncovered. */
  double travel() {
    return isAcross() ? hole.width() : hole.height();
  }

  private boolean isAcross() {
    Opening.Motion motion = moving.opening().motion();
    if (motion instanceof Hinged hinged) {
      return isAcross(hinged.hinge());
    }
    return !(motion instanceof Slides slides) || isAcross(slides.toward());
  }

  private static boolean isAcross(Side side) {
    return side == Side.LEFT || side == Side.RIGHT;
  }

  /**
   * Share of the hole that the camera sees uncovered, 0 to 1; empty where that is not to be told
   * from above.
   */
  OptionalDouble uncovered(double amount) {
    Measure measure = moving.measure();
    if (measure instanceof Measure.Turn || measure instanceof Measure.Slide) {
      double area = hole.width() * hole.height();
      return OptionalDouble.of(1 - flap(amount).areaIn(hole) / area);
    }
    return measure instanceof Measure.Listed
        ? OptionalDouble.empty()
        : OptionalDouble.of(measure.uncovered(amount));
  }

  /** The amount at which the camera sees a share of the hole uncovered. */
  double amountAt(double uncovered) {
    double low = 0;
    double high = moving.measure().whole() * 1.2;
    for (int round = 0; round < 40; round++) {
      double middle = (low + high) / 2;
      if (uncovered(middle).orElse(0) < uncovered) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private Quad flap(double amount) {
    Opening.Motion motion = moving.opening().motion();
    if (motion instanceof Hinged hinged) {
      return turned(hinged.hinge(), amount);
    }
    if (motion instanceof Slides slides) {
      double way = amount / millimetersPerPixel;
      return Quad.of(
          switch (slides.toward()) {
            case LEFT -> hole.moved(-way, 0);
            case RIGHT -> hole.moved(way, 0);
            case TOP -> hole.moved(0, -way);
            case BOTTOM -> hole.moved(0, way);
          });
    }
    return Quad.of(hole);
  }

  private Quad turned(Side hinge, double degrees) {
    double radians = Math.toRadians(degrees);
    double length = isAcross(hinge) ? hole.width() : hole.height();
    double reach = length * Math.cos(radians);
    double high = length * Math.sin(radians) * millimetersPerPixel;
    double larger =
        Double.isInfinite(moving.distanceMillimeters())
            ? 1
            : moving.distanceMillimeters() / (moving.distanceMillimeters() - high);
    return new Quad(
        switch (hinge) {
          case LEFT ->
              List.of(
                  new Corner(hole.left(), hole.top()),
                  seen(hole.left() + reach, hole.top(), larger),
                  seen(hole.left() + reach, hole.bottom(), larger),
                  new Corner(hole.left(), hole.bottom()));
          case RIGHT ->
              List.of(
                  new Corner(hole.right(), hole.top()),
                  seen(hole.right() - reach, hole.top(), larger),
                  seen(hole.right() - reach, hole.bottom(), larger),
                  new Corner(hole.right(), hole.bottom()));
          case TOP ->
              List.of(
                  new Corner(hole.left(), hole.top()),
                  seen(hole.left(), hole.top() + reach, larger),
                  seen(hole.right(), hole.top() + reach, larger),
                  new Corner(hole.right(), hole.top()));
          case BOTTOM ->
              List.of(
                  new Corner(hole.left(), hole.bottom()),
                  seen(hole.left(), hole.bottom() - reach, larger),
                  seen(hole.right(), hole.bottom() - reach, larger),
                  new Corner(hole.right(), hole.bottom()));
        });
  }

  private Corner seen(double x, double y, double larger) {
    return new Corner(
        width / 2.0 + (x - width / 2.0) * larger, height / 2.0 + (y - height / 2.0) * larger);
  }

  /** All that the flap covers on its way, with a margin for the hand's slack. */
  Box sweep() {
    Box sweep = hole;
    for (int part = 0; part <= 16; part++) {
      double amount = moving.measure().whole() * part / 16;
      sweep = sweep.with(flap(amount).bounds());
    }
    return sweep.padded(0.06 * Math.max(hole.width(), hole.height()) + 0.01 * width);
  }

  /** Where the flap's own shadow may go: as far from it as it is high, light at 45 degrees. */
  Box shadow() {
    double high = 0;
    for (int part = 0; part <= 16; part++) {
      double amount = moving.measure().whole() * part / 16;
      high = Math.max(high, moving.measure().height(amount).orElse(0));
    }
    return sweep().padded(high / millimetersPerPixel);
  }

  /** Which edges of its hole the movement uncovers by its end. */
  Edges edges() {
    Opening.Motion motion = moving.opening().motion();
    Side last =
        motion instanceof Hinged hinged
            ? hinged.hinge()
            : motion instanceof Slides slides ? slides.toward() : null;
    boolean whole = uncovered(moving.measure().whole()).orElse(1) > 0.985;
    return new Edges(
        whole || last != Side.LEFT,
        whole || last != Side.TOP,
        whole || last != Side.RIGHT,
        whole || last != Side.BOTTOM);
  }
}

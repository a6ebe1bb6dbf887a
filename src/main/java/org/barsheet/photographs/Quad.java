package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.pixels.Box;

/**
 * A flap as the camera sees it: four corners in pixels, one after another around it.
 *
 * @param corners each {@code {x, y}}
 */
record Quad(List<Corner> corners) {

  /** A corner in pixels. */
  record Corner(double x, double y) {}

  Quad {
    corners = List.copyOf(corners);
  }

  static Quad of(Box box) {
    return new Quad(
        List.of(
            new Corner(box.left(), box.top()),
            new Corner(box.right(), box.top()),
            new Corner(box.right(), box.bottom()),
            new Corner(box.left(), box.bottom())));
  }

  Box bounds() {
    Box bounds = null;
    for (Corner corner : corners) {
      Box point = new Box(corner.x(), corner.y(), corner.x(), corner.y());
      bounds = bounds == null ? point : bounds.with(point);
    }
    return java.util.Objects.requireNonNull(bounds);
  }

  /**
   * Area it has in common with a box: the polygon clipped at each edge (Sutherland and Hodgman,
   * Reentrant polygon clipping, 1974), its area by the shoelace formula.
   */
  double areaIn(Box box) {
    List<Corner> left = clipped(corners, true, box.left(), 1);
    List<Corner> right = clipped(left, true, box.right(), -1);
    List<Corner> top = clipped(right, false, box.top(), 1);
    return area(clipped(top, false, box.bottom(), -1));
  }

  private static List<Corner> clipped(
      List<Corner> polygon, boolean across, double limit, int side) {
    List<Corner> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Corner one = polygon.get(i);
      Corner next = polygon.get((i + 1) % polygon.size());
      double depth = side * ((across ? one.x() : one.y()) - limit);
      double nextDepth = side * ((across ? next.x() : next.y()) - limit);
      if (depth >= 0) {
        kept.add(one);
      }
      if ((depth < 0) != (nextDepth < 0)) {
        double way = depth / (depth - nextDepth);
        kept.add(
            new Corner(one.x() + way * (next.x() - one.x()), one.y() + way * (next.y() - one.y())));
      }
    }
    return kept;
  }

  private static double area(List<Corner> polygon) {
    double twice = 0;
    for (int i = 0; i < polygon.size(); i++) {
      Corner one = polygon.get(i);
      Corner next = polygon.get((i + 1) % polygon.size());
      twice += one.x() * next.y() - next.x() * one.y();
    }
    return Math.abs(twice) / 2;
  }
}

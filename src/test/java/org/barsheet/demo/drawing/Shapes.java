package org.barsheet.demo.drawing;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Outlines in squares of the artwork, from its top left corner. */
final class Shapes {

  private Shapes() {}

  static Shape box(double left, double top, double width, double height) {
    return new Rectangle2D.Double(left, top, width, height);
  }

  static Shape disc(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  /** A polygon through x, y, x, y … */
  static Shape polygon(double... points) {
    Path2D.Double path = new Path2D.Double();
    path.moveTo(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      path.lineTo(points[i], points[i + 1]);
    }
    path.closePath();
    return path;
  }

  /** A strip whose upper edge is scalloped like scissor-cut waves; its foot is straight. */
  static Shape waves(
      double left,
      double right,
      double top,
      double foot,
      double step,
      double shift,
      double height) {
    Path2D.Double path = new Path2D.Double();
    path.moveTo(left - step, foot);
    double x = left - step + shift;
    path.lineTo(x, top);
    while (x < right + step) {
      path.quadTo(x + step / 2, top + height, x + step, top);
      x += step;
    }
    path.lineTo(x, foot);
    path.closePath();
    return path;
  }

  /** A long cloud: a strip with round ends. */
  static Shape cloud(double left, double top, double width, double height) {
    return new RoundRectangle2D.Double(left, top, width, height, height, height);
  }

  /** A gull seen from afar: two wings cut in one piece. */
  static Shape gull(double x, double y, double span) {
    Path2D.Double path = new Path2D.Double();
    path.moveTo(x - span, y - span * 0.28);
    path.quadTo(x - span * 0.42, y - span * 0.52, x, y);
    path.quadTo(x + span * 0.42, y - span * 0.6, x + span, y - span * 0.42);
    path.quadTo(x + span * 0.45, y - span * 0.18, x + span * 0.14, y + span * 0.2);
    path.lineTo(x - span * 0.16, y + span * 0.18);
    path.quadTo(x - span * 0.5, y - span * 0.14, x - span, y - span * 0.28);
    path.closePath();
    return path;
  }

  /** A curled slip of paper, pointed at both ends. */
  static Shape slip(double x, double y, double width) {
    Path2D.Double path = new Path2D.Double();
    path.moveTo(x, y);
    path.curveTo(x + width * 0.3, y - width * 0.28, x + width * 0.6, y + 0.12, x + width, y - 0.12);
    path.curveTo(x + width * 0.6, y + 0.3, x + width * 0.35, y - width * 0.14, x, y);
    path.closePath();
    return path;
  }
}

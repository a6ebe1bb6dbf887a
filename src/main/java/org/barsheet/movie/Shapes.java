package org.barsheet.movie;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.TexturePaint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.barsheet.frames.Cover;
import org.barsheet.plan.Rect;

/** Shapes on the artwork, in squares. */
final class Shapes {

  private Shapes() {}

  static Rectangle2D of(Rect rect) {
    return new Rectangle2D.Double(rect.left(), rect.top(), rect.width(), rect.height());
  }

  static Shape of(List<List<Cover.Point>> outline) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (List<Cover.Point> corners : outline) {
      path.moveTo(corners.get(0).x(), corners.get(0).y());
      corners.subList(1, corners.size()).forEach(corner -> path.lineTo(corner.x(), corner.y()));
      path.closePath();
    }
    return path;
  }

  /** What a cover leaves free of a hole. */
  static Shape without(Shape hole, Cover cover) {
    if (cover.solid() < 1) {
      return hole;
    }
    Area free = new Area(hole);
    free.subtract(new Area(of(cover.outline())));
    return free;
  }

  /** Puts an image onto a rectangle. */
  static AffineTransform onto(BufferedImage image, Rect rect) {
    return new AffineTransform(
        rect.width() / image.getWidth(),
        0,
        0,
        rect.height() / image.getHeight(),
        rect.left(),
        rect.top());
  }

  /** Fills a shape with the part of an image that lies in it, where the image fills a rectangle. */
  static void fill(Graphics2D pen, Shape shape, BufferedImage image, Rectangle2D rect) {
    pen.setPaint(new TexturePaint(image, rect));
    pen.fill(shape);
  }
}

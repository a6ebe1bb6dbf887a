package org.barsheet.artwork;

import org.barsheet.artwork.PaperEdge.Point;
import org.barsheet.plan.Camera;
import org.barsheet.plan.Rect;

/**
 * Where points of a model lie in a photograph of it, looked at straight from above, nominal: a thin
 * lens without distortion.
 *
 * @param right of the field's middle in millimeters of the model
 * @param down of the field's middle
 * @param distance from lens to table in millimeters
 * @param pixelsPerMillimeter on the table
 * @param width of the photograph in pixels
 * @param height of it
 */
public record PhotographView(
    double right, double down, double distance, double pixelsPerMillimeter, int width, int height) {

  /** A pixel of the photograph from its top left corner, not rounded. */
  public record Pixel(double x, double y) {}

  /**
   * What a camera sees of a field whose width fills its sensor's.
   *
   * @param field in squares of the artwork
   * @param scale of the model
   * @param optics of the camera
   */
  public static PhotographView of(Rect field, ModelScale scale, Camera camera, Optics optics) {
    double wide = scale.millimeters(field.width());
    return new PhotographView(
        scale.millimeters(field.left() + field.width() / 2),
        scale.millimeters(field.top() + field.height() / 2),
        optics.distance(wide),
        camera.pixelsWidth() / wide,
        camera.pixelsWidth(),
        camera.pixelsHeight());
  }

  /** Whether a point is so far below the lens that it can be seen. */
  public boolean sees(Point point) {
    return point.up() < distance;
  }

  /**
   * Where a point lies: what stands up looks larger about the middle by {@code d/(d − h)}
   * (intercept theorem).
   *
   * @param point below the lens
   */
  public Pixel pixel(Point point) {
    double looming = distance / (distance - point.up()) * pixelsPerMillimeter;
    return new Pixel(
        width / 2.0 + (point.right() - right) * looming,
        height / 2.0 + (point.down() - down) * looming);
  }
}

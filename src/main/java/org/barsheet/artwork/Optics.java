package org.barsheet.artwork;

import org.barsheet.plan.Camera;
import org.barsheet.plan.Film;

/**
 * What the camera's lens and sensor make of the artwork. Distances are nominal: those of a thin
 * lens, seen from its middle; a real lens differs by some millimeters, so they are where to begin,
 * not where to stop.
 */
public final class Optics {

  private final Camera camera;
  private final Film film;

  public Optics(Camera camera, Film film) {
    this.camera = camera;
    this.film = film;
  }

  /**
   * Distance in millimeters at which the sensor's width sees a field: {@code f·(field/sensor + 1)}
   * (the thin lens equation 1/f = 1/d + 1/d′ with the magnification d′/d = sensor/field).
   *
   * @param fieldMillimeters width of the field, more than 0
   */
  public double distance(double fieldMillimeters) {
    return camera.lensMillimeters() * (fieldMillimeters / camera.sensorMillimeters() + 1);
  }

  /**
   * How much larger a point that stands up from the field looks: {@code d/(d − h)} (intercept
   * theorem).
   *
   * @param fieldMillimeters width of the field
   * @param heightMillimeters how far the point stands up, less than the distance
   */
  public double looming(double fieldMillimeters, double heightMillimeters) {
    double distance = distance(fieldMillimeters);
    return distance / (distance - heightMillimeters);
  }

  /**
   * Pixels of the camera's frame to one of the film's, in the direction that has fewer: how far a
   * field can be narrowed afterwards before the frame is blown up.
   */
  public double headroom() {
    return Math.min(
        (double) camera.pixelsWidth() / film.width(),
        (double) camera.pixelsHeight() / film.height());
  }
}

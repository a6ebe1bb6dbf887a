package org.barsheet.artwork;

import org.barsheet.plan.Camera;
import org.barsheet.plan.Film;

/**
 * What the camera's lens and sensor make of the artwork. Distances are nominal: those of a thin
 * lens, seen from its middle; a real lens differs by some millimetres, so they are where to begin,
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
   * Distance in millimetres at which the sensor's width sees a field: {@code f·(field/sensor + 1)}
   * (the thin lens equation 1/f = 1/d + 1/d′ with the magnification d′/d = sensor/field).
   *
   * @param fieldMillimetres width of the field, more than 0
   */
  public double distance(double fieldMillimetres) {
    return camera.lensMillimetres() * (fieldMillimetres / camera.sensorMillimetres() + 1);
  }

  /**
   * How much larger a point that stands up from the field looks: {@code d/(d − h)} (intercept
   * theorem).
   *
   * @param fieldMillimetres width of the field
   * @param heightMillimetres how far the point stands up, less than the distance
   */
  public double looming(double fieldMillimetres, double heightMillimetres) {
    double distance = distance(fieldMillimetres);
    return distance / (distance - heightMillimetres);
  }

  /**
   * Pixels of the camera's picture to one of the film's, in the direction that has fewer: how far a
   * field can be narrowed afterwards before the picture is blown up.
   */
  public double headroom() {
    return Math.min(
        (double) camera.pictureWidth() / film.width(),
        (double) camera.pictureHeight() / film.height());
  }
}

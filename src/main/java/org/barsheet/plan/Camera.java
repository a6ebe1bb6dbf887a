package org.barsheet.plan;

/**
 * The camera that photographs the models.
 *
 * @param lensMillimetres focal length
 * @param sensorMillimetres width of the sensor
 * @param pictureWidth of its pictures in pixels
 * @param pictureHeight of its pictures in pixels
 */
public record Camera(
    double lensMillimetres, double sensorMillimetres, int pictureWidth, int pictureHeight) {}

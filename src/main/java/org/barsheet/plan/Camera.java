package org.barsheet.plan;

/**
 * The camera that photographs the models.
 *
 * @param lensMillimeters focal length
 * @param sensorMillimeters width of the sensor
 * @param pixelsWidth of its photographs in pixels
 * @param pixelsHeight of its photographs in pixels
 */
public record Camera(
    double lensMillimeters, double sensorMillimeters, int pixelsWidth, int pixelsHeight) {}

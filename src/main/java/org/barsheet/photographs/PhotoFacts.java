package org.barsheet.photographs;

/**
 * What a photograph's file says of it; "" where it does not say.
 *
 * @param width in pixels as it is seen, after it was turned
 * @param height in pixels as it is seen, after it was turned
 * @param orientation 1 to 8, how it has to be turned to be seen (EXIF's Orientation)
 * @param taken when, with parts of a second: {@code 2026:03:02 10:15:04.25}
 * @param camera make and model
 * @param lens its name
 * @param focal length in millimeters, as written
 * @param exposure time, aperture and sensitivity, as written
 * @param whiteBalance as written
 */
public record PhotoFacts(
    int width,
    int height,
    int orientation,
    String taken,
    String camera,
    String lens,
    String focal,
    String exposure,
    String whiteBalance) {}

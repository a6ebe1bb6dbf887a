package org.barsheet.movie;

import java.awt.image.BufferedImage;
import java.io.IOException;

/** Takes the frames of a movie, one by one, in order. */
@FunctionalInterface
public interface FrameSink {

  /**
   * Takes a frame; the image is drawn into again afterwards.
   *
   * @param image in RGB, one whole number a pixel
   * @param frame of the film
   * @throws IOException if it is not taken
   */
  void take(BufferedImage image, long frame) throws IOException;
}

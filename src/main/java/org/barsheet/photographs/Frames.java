package org.barsheet.photographs;

/**
 * Pixels of photographs and of the film.
 *
 * @param width of the photographs as they were decoded
 * @param height of the photographs as they were decoded
 * @param every pixels of a photograph for one of those, in each direction
 * @param filmWidth of the film's frame
 * @param filmHeight of the film's frame
 */
record Frames(int width, int height, int every, int filmWidth, int filmHeight) {

  static Frames of(PhotoFacts facts, int filmWidth, int filmHeight) {
    int every = PhotographReader.every(facts);
    return new Frames(
        (facts.width() + every - 1) / every,
        (facts.height() + every - 1) / every,
        every,
        filmWidth,
        filmHeight);
  }

  /** A photograph of another shape than the frame is first cut to that about its middle. */
  double filmPixels(double decoded) {
    double cut = Math.min(width, (double) height * filmWidth / filmHeight);
    return decoded * filmWidth / cut;
  }
}

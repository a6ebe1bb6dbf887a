package org.barsheet.movie;

import org.barsheet.plan.Film;

/**
 * Sizes of a movie's frame in pixels, all even: H.264 with 4:2:0 color wants it so.
 *
 * @param width of the image, and of the frame
 * @param height of the image
 * @param strip height of the strip below it, 0 for none
 */
record Sizes(int width, int height, int strip) {

  /** Below this nothing can be told apart, above it no player follows. */
  static final int NARROWEST = 64;

  static final int WIDEST = 7680;

  private static final int LEAST_STRIP = 24;

  /** Of the strip, to one pixel of the image's width. */
  private static final double STRIP = 44.0 / 960;

  /**
   * The sizes of a film's frame.
   *
   * @param width asked for, 64 to 7680
   */
  static Sizes of(Film film, int width, boolean withStrip) {
    int even = even(width);
    int height = Math.max(2, even((double) even * film.height() / film.width()));
    int strip = withStrip ? Math.max(LEAST_STRIP, even(even * STRIP)) : 0;
    return new Sizes(even, height, strip);
  }

  private static int even(double pixels) {
    return 2 * (int) Math.round(pixels / 2);
  }

  /** Image and strip together. */
  int all() {
    return height + strip;
  }
}

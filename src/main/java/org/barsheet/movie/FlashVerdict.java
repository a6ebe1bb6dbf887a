package org.barsheet.movie;

/**
 * The worst second of a movie.
 *
 * @param endFrame film frame at which the second ends
 * @param flashes pairs of opposing changes in it: 4 stands for 4 or more; 0 where nothing of size
 *     flashes
 * @param share of a field of 10° that flashes so often, 0 to 1
 * @param red whether it is red that flashes, rather than brightness
 */
public record FlashVerdict(long endFrame, int flashes, double share, boolean red) {

  /** Nothing of size goes bright and dark. */
  static final FlashVerdict CALM = new FlashVerdict(0, 0, 0, false);

  boolean isLessThan(int otherFlashes, double otherShare) {
    return flashes < otherFlashes || (flashes == otherFlashes && share < otherShare);
  }

  /** Whether it flashes more often than WCAG 2.3.1 allows. */
  public boolean isOver() {
    return flashes > FlashMeter.ALLOWED;
  }
}

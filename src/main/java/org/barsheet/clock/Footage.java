package org.barsheet.clock;

/**
 * A count of frames as feet and frames of four-perforation 35 mm film, 16 frames to the foot.
 *
 * @param feet whole feet, 0 or more
 * @param frames 0 to 15
 */
public record Footage(long feet, int frames) {

  private static final int FRAMES_PER_FOOT = 16;

  public Footage {
    if (feet < 0 || frames < 0 || frames >= FRAMES_PER_FOOT) {
      throw new IllegalArgumentException("no footage: " + feet + "+" + frames);
    }
  }

  /**
   * Feet and frames of a count.
   *
   * @throws IllegalArgumentException if the count is negative
   */
  public static Footage ofFrames(long count) {
    return new Footage(
        Math.floorDiv(count, FRAMES_PER_FOOT), Math.floorMod(count, FRAMES_PER_FOOT));
  }

  /** Frames altogether. */
  public long count() {
    return feet * FRAMES_PER_FOOT + frames;
  }

  /** {@code 6+04}. */
  @Override
  public String toString() {
    return feet + "+" + (frames < 10 ? "0" : "") + frames;
  }
}

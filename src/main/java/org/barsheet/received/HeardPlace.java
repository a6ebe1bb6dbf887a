package org.barsheet.received;

import org.barsheet.clock.Seconds;

/**
 * Where a clip lies by its sound.
 *
 * @param start of its first sample or frame, from the music's start, to a sample
 * @param drift of its clock in millionths, above 0 where it ran slow
 * @param confidence 0, a guess, to 1
 * @param within milliseconds that the start is hardly ever farther off: three standard errors
 * @param by what it was found by: "the guide", "the recording" or "the click in it"
 */
public record HeardPlace(Seconds start, double drift, double confidence, double within, String by) {

  /** Confidence from which a place is to be trusted. */
  private static final double TRUSTED = 0.5;

  /** A start that is sure is right to so many milliseconds. */
  private static final double SURE = 5;

  /** One that is farther off than about a frame says nothing to an editor. */
  private static final double FOUND = 40;

  /** Whether the place is the right one, and the start right to 5 ms. */
  public boolean isSure() {
    return confidence >= TRUSTED && within <= SURE;
  }

  /** Whether the place is the right one, and the start right to about a frame. */
  public boolean isFound() {
    return confidence >= TRUSTED && within <= FOUND;
  }

  /** The same to a sample, a tenth of a millionth, a hundredth and a tenth of a millisecond. */
  public static HeardPlace rounded(
      Seconds start, double drift, double confidence, double within, String by) {
    return new HeardPlace(
        start,
        Math.round(10 * drift) / 10.0,
        Math.round(100 * confidence) / 100.0,
        Math.min(9_999, Math.ceil(10 * within) / 10),
        by);
  }
}

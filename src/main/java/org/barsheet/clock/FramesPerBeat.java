package org.barsheet.clock;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A tempo as film editors write it for a click: whole frames and eighths of a frame per beat, 12-4
 * for 12½. An eighth of a frame is half a perforation of four-perforation 35 mm film.
 *
 * @param eighths eighths of a frame from one beat to the next, more than 0
 */
public record FramesPerBeat(long eighths) {

  public FramesPerBeat {
    if (eighths <= 0) {
      throw new IllegalArgumentException("a beat lasts longer than " + eighths + "/8 frames");
    }
  }

  /**
   * The nearest eighths for a beat of this length (a tie goes to the longer beat); at least one
   * eighth.
   */
  public static FramesPerBeat nearest(FrameRate rate, Seconds beat) {
    BigFraction sixteenths = beat.value().multiply(rate.framesPerSecond()).multiply(16);
    BigInteger rounded =
        sixteenths
            .getNumerator()
            .add(sixteenths.getDenominator())
            .divide(sixteenths.getDenominator().shiftLeft(1));
    return new FramesPerBeat(Math.max(1, rounded.longValueExact()));
  }

  /** Exact beats per minute at a rate: {@code 60 × rate / (eighths / 8)}. */
  public BigFraction beatsPerMinute(FrameRate rate) {
    return rate.framesPerSecond().multiply(480).divide(eighths);
  }

  /** How long the beat lasts at a rate. */
  public Seconds beat(FrameRate rate) {
    return new Seconds(
        BigFraction.of(BigInteger.valueOf(eighths)).divide(8).divide(rate.framesPerSecond()));
  }

  /** {@code 12-4}. */
  @Override
  public String toString() {
    return eighths / 8 + "-" + eighths % 8;
  }
}

package org.barsheet.score;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A time signature.
 *
 * @param numerator 1 to 255
 * @param denominator a power of two, 1 to 128
 */
public record Meter(int numerator, int denominator) {

  /** What a file without a time signature means (Standard MIDI File 1.0). */
  public static final Meter COMMON = new Meter(4, 4);

  public Meter {
    if (numerator < 1 || numerator > 255) {
      throw new IllegalArgumentException("no meter has " + numerator + " beats");
    }
    if (denominator < 1 || denominator > 128 || Integer.bitCount(denominator) != 1) {
      throw new IllegalArgumentException("no meter counts 1/" + denominator + " notes");
    }
  }

  /** Length of a full bar in quarter notes. */
  public BigFraction quarters() {
    return BigFraction.of(4L * numerator, denominator);
  }

  /**
   * Whether the felt beat is dotted: the numerator is a multiple of 3 above 3 (6/8, 9/8, 12/16,
   * 6/4).
   */
  public boolean isCompound() {
    return numerator > 3 && numerator % 3 == 0;
  }

  /** Length of the felt beat in quarter notes. */
  public BigFraction feltBeatQuarters() {
    return BigFraction.of(isCompound() ? 12L : 4L, denominator);
  }

  /**
   * Length of a full bar in ticks.
   *
   * @param ticksPerQuarter a multiple of 32, so that every meter comes out whole
   */
  public long ticks(int ticksPerQuarter) {
    return 4L * numerator * ticksPerQuarter / denominator;
  }

  /**
   * Length of the felt beat in ticks.
   *
   * @param ticksPerQuarter a multiple of 32, so that every meter comes out whole
   */
  public long feltBeatTicks(int ticksPerQuarter) {
    return (isCompound() ? 12L : 4L) * ticksPerQuarter / denominator;
  }

  /** Felt beats in a full bar. */
  public int feltBeats() {
    return isCompound() ? numerator / 3 : numerator;
  }

  /** {@code 6/8}. */
  @Override
  public String toString() {
    return numerator + "/" + denominator;
  }
}

package org.barsheet.motif;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One note of a motif.
 *
 * @param onset quarter notes from the motif's first note, 0 or more
 * @param length quarter notes, more than 0
 * @param pitch MIDI key, 0 to 127
 */
public record MotifNote(BigFraction onset, BigFraction length, int pitch) {

  public MotifNote {
    if (onset.signum() < 0 || length.signum() <= 0 || pitch < 0 || pitch > 127) {
      throw new IllegalArgumentException("no motif note");
    }
  }
}

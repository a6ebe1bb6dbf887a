package org.barsheet.revision;

import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A note as its bar holds it.
 *
 * @param at quarter notes from the bar's start
 * @param pitch MIDI pitch, 0 to 127
 * @param length in quarter notes
 * @param drum whether the pitch means a drum
 */
record HeldNote(BigFraction at, int pitch, BigFraction length, boolean drum) {

  static final Comparator<HeldNote> ORDER =
      Comparator.comparing(HeldNote::at)
          .thenComparingInt(HeldNote::pitch)
          .thenComparing(HeldNote::length);

  /** The same note so many semitones higher. */
  HeldNote higher(int semitones) {
    return new HeldNote(at, pitch + semitones, length, drum);
  }
}

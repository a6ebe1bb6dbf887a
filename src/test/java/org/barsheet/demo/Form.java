package org.barsheet.demo;

/** How a planted return differs from the motif's first sounding. */
public enum Form {
  /** The same pitches. */
  AS_GIVEN,
  /** Every pitch moved by the same number of semitones. */
  TRANSPOSED,
  /** Moved by scale steps: intervals keep their number, not their quality. */
  TONAL,
  /** Every interval turned upside down. */
  INVERTED,
  /** Every value doubled. */
  AUGMENTED,
  /** The motif's own notes in their places, with others between them. */
  ORNAMENTED
}

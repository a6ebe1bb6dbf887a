package org.barsheet.motif;

/** How near a return must be to count: each kind includes those before it. */
public enum Match {
  /** Same pitches (in any octave), same rhythm. */
  EXACT,
  /** Same intervals in semitones. */
  TRANSPOSED,
  /** Same steps of the scale: tonal answers, the minor. */
  TONAL,
  /** Freely varied: some intervals and lengths differ. */
  FREE
}

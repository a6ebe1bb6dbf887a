package org.barsheet.motif.match;

/** How far a search lets a chain stray, at what cost the rules say. */
public enum Leeway {
  /** Every note on time, one after another at most missing. */
  ON_TIME(false, 1),
  /** Notes early or late by up to half the way to the next. */
  SHIFTED(true, 1),
  /** Whatever can still be compared: for telling why a place is no return. */
  NEAR(true, 3);

  private final boolean shifts;
  private final int mostLostWithin;

  Leeway(boolean shifts, int mostLostWithin) {
    this.shifts = shifts;
    this.mostLostWithin = mostLostWithin;
  }

  boolean shifts() {
    return shifts;
  }

  /** How many notes may be missing one after another, the ends apart. */
  int mostLostWithin() {
    return mostLostWithin;
  }
}

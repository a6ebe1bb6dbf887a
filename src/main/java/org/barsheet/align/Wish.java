package org.barsheet.align;

/**
 * One hard thing a plan asks for.
 *
 * @param panel index of the panel that asks, from 0
 * @param kind what it asks
 */
record Wish(int panel, Kind kind) {

  /** What can be asked of a panel. */
  enum Kind {
    /** To sit where the plan says. */
    PLACE,
    /** To be no shorter and no longer than a range. */
    LENGTH,
    /** Room for its reveals. */
    REVEALS,
    /** To keep the frames of an earlier sheet. */
    LOCK
  }
}

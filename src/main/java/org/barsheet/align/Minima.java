package org.barsheet.align;

/** The least of a row of costs, up to and from each place. */
final class Minima {

  private final long[] upTo;
  private final long[] from;

  Minima(long[] costs) {
    this.upTo = costs.clone();
    this.from = costs.clone();
    for (int i = 1; i < costs.length; i++) {
      upTo[i] = Math.min(upTo[i], upTo[i - 1]);
    }
    for (int i = costs.length - 2; i >= 0; i--) {
      from[i] = Math.min(from[i], from[i + 1]);
    }
  }

  /** The least of the costs up to a place, itself included. */
  long upTo(int i) {
    return upTo[i];
  }

  /** The least of the costs from a place on, itself included. */
  long from(int i) {
    return from[i];
  }
}

package org.barsheet.plan;

/**
 * Where a movement is slow. With t from 0 to 1 the share of the movement done is: none t, start t²,
 * end 1 − (1 − t)², both 3t² − 2t³.
 */
public enum Slow {
  NONE("none"),
  START("start"),
  END("end"),
  BOTH("both");

  private final String word;

  Slow(String word) {
    this.word = word;
  }

  /** The word a plan uses. */
  public String word() {
    return word;
  }

  /** Share of the movement done, 0 to 1, at a share of its photographs {@code t}, 0 to 1. */
  public double progress(double t) {
    return switch (this) {
      case NONE -> t;
      case START -> t * t;
      case END -> t * (2 - t);
      case BOTH -> t * t * (3 - 2 * t);
    };
  }
}

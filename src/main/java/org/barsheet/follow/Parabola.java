package org.barsheet.follow;

/** The parabola through three values a step apart. */
final class Parabola {

  private Parabola() {}

  /** Where its top is, in steps from the middle one; 0 where the middle one isn't the greatest. */
  static double top(double before, double middle, double after) {
    double bend = before - 2 * middle + after;
    return middle > before && middle >= after && bend < 0 ? 0.5 * (before - after) / bend : 0;
  }
}

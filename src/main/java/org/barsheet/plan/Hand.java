package org.barsheet.plan;

import java.util.Optional;

/**
 * What the animator's hand can do. The units are what it is told to set: a measure is rounded to
 * the nearest of them.
 *
 * @param degrees smallest angle it can set, more than 0
 * @param millimeters smallest way it can set, more than 0
 * @param percent smallest change of light it can set, more than 0
 * @param largestStep the most a free edge may go from one photograph to the next, in millimeters at
 *     the model's size, where given
 */
public record Hand(
    double degrees, double millimeters, double percent, Optional<Double> largestStep) {

  /** Half a degree, half a millimeter, one percent: common practice, no source. */
  public static final Hand DEFAULT = new Hand(0.5, 0.5, 1, Optional.empty());

  public Hand {
    if (!(degrees > 0) || !(millimeters > 0) || !(percent > 0)) {
      throw new IllegalArgumentException("a hand sets more than nothing");
    }
  }
}

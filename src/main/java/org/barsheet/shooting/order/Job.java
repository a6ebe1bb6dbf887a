package org.barsheet.shooting.order;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Something to photograph, as the set sees it.
 *
 * @param view what the camera has to see, by number: jobs of one view are always taken from one
 *     position of the camera
 * @param flaps the flaps it asks something of, in the order of their names
 */
public record Job(int view, Map<String, Level> flaps) {

  public Job {
    flaps = Collections.unmodifiableMap(new TreeMap<>(flaps));
  }

  /**
   * How far a flap stands open.
   *
   * @param before when the job begins, 0 closed to 1 fully open
   * @param after when it is done, not less: paper rarely closes cleanly
   */
  public record Level(double before, double after) {

    public Level {
      if (after < before) {
        throw new IllegalArgumentException("a flap does not close");
      }
    }

    /** A flap that stands still meanwhile. */
    public static Level at(double open) {
      return new Level(open, open);
    }
  }
}

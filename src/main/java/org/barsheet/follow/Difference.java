package org.barsheet.follow;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.recording.Chromagram;

/**
 * A place where a recording isn't what the score says: music left out, or more of it.
 *
 * @param kind which of the two
 * @param fromScore second of the score at which it begins
 * @param toScore second of the score at which both are together again; the same where the recording
 *     has more
 * @param from second of the recording at which it begins
 * @param to second of the recording at which both are together again
 */
public record Difference(Kind kind, double fromScore, double toScore, double from, double to) {

  /** What differs. */
  public enum Kind {
    /** The recording lacks music of the score. */
    LEFT_OUT,
    /** The recording has music the score lacks: a repeat, a vamp, a pause. */
    ADDED
  }

  /** A tempo beyond these, against the whole piece's, is no tempo. */
  private static final double SLOWEST = 3;

  private static final double FASTEST = 0.33;

  /** Shorter differences are playing. */
  private static final double SHORTEST_SECONDS = 2;

  /** The path is looked at over this many frames: a second. */
  private static final int SPAN = Chromagram.RATE;

  /** All differences along a path of frames of the recording, one for each frame of the score. */
  static List<Difference> along(double[] path) {
    List<Difference> differences = new ArrayList<>();
    double whole = (path[path.length - 1] - path[0]) / Math.max(1, path.length - 1);
    for (int i = 0; i + SPAN < path.length; ) {
      double tempo = (path[i + SPAN] - path[i]) / SPAN / Math.max(0.2, whole);
      if (tempo < SLOWEST && tempo > FASTEST) {
        i++;
        continue;
      }
      int to = end(path, i, tempo > 1, whole);
      Difference found = between(path, tempo > 1 ? Kind.ADDED : Kind.LEFT_OUT, i, to);
      if (Math.abs(found.length(whole)) >= SHORTEST_SECONDS) {
        differences.add(found);
      }
      i = to + 1;
    }
    return differences;
  }

  private static int end(double[] path, int from, boolean slow, double whole) {
    int to = from + SPAN;
    while (to + 1 < path.length) {
      double tempo = (path[to + 1] - path[to + 1 - SPAN]) / SPAN / Math.max(0.2, whole);
      if (slow ? tempo < SLOWEST : tempo > FASTEST) {
        break;
      }
      to++;
    }
    return to;
  }

  private static Difference between(double[] path, Kind kind, int from, int to) {
    double rate = Chromagram.RATE;
    return new Difference(kind, from / rate, to / rate, path[from] / rate, path[to] / rate);
  }

  /** How much longer the recording is there than the score asks for, in seconds. */
  private double length(double whole) {
    return to - from - whole * (toScore - fromScore);
  }
}

package org.barsheet.pulse.free;

/**
 * The beat lengths that are searched, 0.24 to 1.6 s in steps of one search frame, how likely each
 * is, and what a change from one to the next costs.
 */
public final class BeatLengths {

  /** Step of the search in time. */
  static final double FRAME_SECONDS = 0.02;

  /** Shortest beat in search frames. */
  static final int SHORTEST = 12;

  /** How many lengths are searched. */
  static final int COUNT = 69;

  /** Longest beat in seconds. */
  public static final double LONGEST_SECONDS = (SHORTEST + COUNT - 1) * FRAME_SECONDS;

  private static final double USUAL_SECONDS = 0.58;
  private static final double USUAL_SPREAD = 0.45;
  private static final double EXPECTED_SPREAD = 0.25;
  private static final double CHANGE_COST = 14;
  private static final double MOST_CHANGE = 1.4;

  private final double[] preference = new double[COUNT];
  private final float[][] changeCosts = new float[COUNT][COUNT];
  private final int[] leastBefore = new int[COUNT];
  private final int[] mostBefore = new int[COUNT];

  private final double centerSeconds;
  private final double spread;
  private final int first;
  private final int last;

  private BeatLengths(double centerSeconds, double spread, int first, int last) {
    this.centerSeconds = centerSeconds;
    this.spread = spread;
    this.first = first;
    this.last = last;
    for (int i = 0; i < COUNT; i++) {
      double z = Math.log(seconds(i) / centerSeconds) / spread;
      preference[i] = -0.5 * z * z;
      leastBefore[i] = Math.max(first, (int) Math.floor(frames(i) / MOST_CHANGE) - SHORTEST);
      mostBefore[i] = Math.min(last, (int) Math.ceil(frames(i) * MOST_CHANGE) - SHORTEST);
      for (int before = 0; before < COUNT; before++) {
        double change = Math.log((double) frames(i) / frames(before));
        changeCosts[i][before] = (float) (CHANGE_COST * change * change);
      }
    }
  }

  /** Lengths as music in general has them, about 0.58 s. */
  public static BeatLengths usual() {
    return new BeatLengths(USUAL_SECONDS, USUAL_SPREAD, 0, COUNT - 1);
  }

  /** Lengths about an expected one. */
  public static BeatLengths around(double seconds) {
    return new BeatLengths(seconds, EXPECTED_SPREAD, 0, COUNT - 1);
  }

  /** The same, only lengths up to so many times shorter or longer than one. */
  public BeatLengths near(double seconds, double times) {
    int shortest = Math.max(0, (int) (seconds / times / FRAME_SECONDS) - SHORTEST);
    int longest = Math.min(COUNT - 1, (int) (seconds * times / FRAME_SECONDS) - SHORTEST);
    return shortest > longest ? this : new BeatLengths(centerSeconds, spread, shortest, longest);
  }

  /** The first length that is searched. */
  int first() {
    return first;
  }

  /** The last length that is searched. */
  int last() {
    return last;
  }

  static int frames(int length) {
    return length + SHORTEST;
  }

  public static double seconds(int length) {
    return frames(length) * FRAME_SECONDS;
  }

  /** Logarithm of how likely a length is, 0 for the likeliest. */
  double preference(int length) {
    return preference[length];
  }

  /** What it costs to come to a length, by the length before it; not to be changed. */
  float[] changeCosts(int length) {
    return changeCosts[length];
  }

  /** Shortest length that may come before one. */
  int leastBefore(int length) {
    return leastBefore[length];
  }

  /** Longest length that may come before one. */
  int mostBefore(int length) {
    return mostBefore[length];
  }
}

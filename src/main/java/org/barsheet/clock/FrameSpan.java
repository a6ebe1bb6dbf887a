package org.barsheet.clock;

/**
 * A run of film frames.
 *
 * @param start first frame, counted from the film's first frame, from 0
 * @param endExclusive the frame after the last one, at least {@code start}
 */
public record FrameSpan(long start, long endExclusive) {

  public FrameSpan {
    if (endExclusive < start) {
      throw new IllegalArgumentException(
          "a span ends before it starts: " + start + ".." + endExclusive);
    }
  }

  /** How many frames, 0 or more. */
  public long length() {
    return endExclusive - start;
  }

  public boolean contains(long frame) {
    return frame >= start && frame < endExclusive;
  }

  /** Whether at least one frame belongs to both. */
  public boolean overlaps(FrameSpan other) {
    return start < other.endExclusive && other.start < endExclusive;
  }
}

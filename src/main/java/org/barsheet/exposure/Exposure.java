package org.barsheet.exposure;

import org.barsheet.clock.FrameSpan;

/**
 * A picture shown for a run of frames.
 *
 * @param frames film frames, at least one
 * @param picture what is shown
 * @param progress share of the movement done in it, 0 closed to 1 fully open
 */
public record Exposure(FrameSpan frames, Picture picture, double progress) {

  public Exposure {
    if (frames.length() < 1) {
      throw new IllegalArgumentException("a picture is shown for at least one frame");
    }
  }
}

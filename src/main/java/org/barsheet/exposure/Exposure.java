package org.barsheet.exposure;

import org.barsheet.clock.FrameSpan;

/**
 * A photograph shown for a run of frames.
 *
 * @param frames film frames, at least one
 * @param photograph what is shown
 * @param progress share of the movement done in it, 0 closed to 1 fully open
 */
public record Exposure(FrameSpan frames, Photograph photograph, double progress) {

  public Exposure {
    if (frames.length() < 1) {
      throw new IllegalArgumentException("a photograph is shown for at least one frame");
    }
  }
}

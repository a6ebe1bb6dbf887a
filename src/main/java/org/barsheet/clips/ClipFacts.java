package org.barsheet.clips;

import java.util.Optional;
import org.barsheet.clock.Seconds;

/**
 * What a recording says of itself. Nothing is decoded: all of it stands in the file's headers.
 *
 * @param length of the longest track
 * @param picture its picture, where it has one
 * @param start of the recording: seconds since midnight where a sound file says so, else how long
 *     after the file's beginning its picture begins
 */
public record ClipFacts(Seconds length, Optional<Picture> picture, Seconds start) {

  /**
   * A moving picture.
   *
   * @param frames how many
   * @param length how long they last together, the last one taken to be as long as the others
   * @param steady whether all of them but the last are shown equally long
   * @param width in pixels as it is shown, turned if the file says so
   * @param height in pixels as it is shown
   */
  public record Picture(long frames, Seconds length, boolean steady, int width, int height) {

    public Picture {
      if (frames < 1 || length.signum() <= 0 || width < 0 || height < 0) {
        throw new IllegalArgumentException("a moving picture has frames and lasts");
      }
    }

    /** How long one frame lasts, in the mean. */
    public Seconds frameDuration() {
      return new Seconds(length.value().divide(frames));
    }
  }
}

package org.barsheet.clips;

import java.util.Optional;
import org.barsheet.clock.Seconds;

/**
 * What a recording says of itself. Nothing is decoded: all of it stands in the file's headers.
 *
 * @param length of the longest track
 * @param video its video, where it has one
 * @param sound what a sound file says of its sound; empty for a film, whose video is what counts
 */
public record ClipFacts(Seconds length, Optional<Video> video, Optional<Sound> sound) {

  /** A film's facts. */
  static ClipFacts ofFilm(Seconds length, Optional<Video> video) {
    return new ClipFacts(length, video, Optional.empty());
  }

  /**
   * The sound of a sound file.
   *
   * @param samplesPerSecond its sampling rate
   * @param sinceMidnight when its first sample is, as the recorder's or the film's timecode has it;
   *     empty where the file says nothing of it
   */
  public record Sound(int samplesPerSecond, Optional<Seconds> sinceMidnight) {

    public Sound {
      if (samplesPerSecond < 1) {
        throw new IllegalArgumentException("sound has samples");
      }
    }
  }

  /**
   * A video.
   *
   * @param frames how many
   * @param length how long they last together, the last one taken to be as long as the others
   * @param steady whether all of them but the last are shown equally long
   * @param width in pixels as it is shown, turned if the file says so
   * @param height in pixels as it is shown
   */
  public record Video(long frames, Seconds length, boolean steady, int width, int height) {

    public Video {
      if (frames < 1 || length.signum() <= 0 || width < 0 || height < 0) {
        throw new IllegalArgumentException("a video has frames and lasts");
      }
    }

    /** How long one frame lasts, in the mean. */
    public Seconds frameDuration() {
      return new Seconds(length.value().divide(frames));
    }
  }
}

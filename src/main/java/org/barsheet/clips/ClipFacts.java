package org.barsheet.clips;

import java.util.Optional;
import org.barsheet.clock.Seconds;

/**
 * What a recording says of itself. Nothing is decoded: all of it stands in the file's headers.
 *
 * @param length of the longest track
 * @param video its video, where it has one
 * @param sound what a sound file says of its sound; empty for a film, whose video is what counts
 * @param sounding whether anything is to be heard
 * @param sinceMidnight when it begins, as the recorder's or the film's timecode has it; empty where
 *     the file says nothing of it
 */
public record ClipFacts(
    Seconds length,
    Optional<Video> video,
    Optional<Sound> sound,
    boolean sounding,
    Optional<Seconds> sinceMidnight) {

  /** A file without timecode that sounds if it is a sound file. */
  public ClipFacts(Seconds length, Optional<Video> video, Optional<Sound> sound) {
    this(length, video, sound, sound.isPresent(), Optional.empty());
  }

  /**
   * The sound of a sound file.
   *
   * @param samplesPerSecond its sampling rate
   */
  public record Sound(int samplesPerSecond) {

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

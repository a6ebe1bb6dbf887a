package org.barsheet.plan;

import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;

/**
 * Settings of the film as a whole.
 *
 * @param rate frames per second and how timecode counts
 * @param firstFrame label of film frame 0
 * @param musicStarts from the first frame to the music's start, 0 s or more
 * @param musicFrom what the music's start is
 * @param framesPerPhotograph how long a frame of a movement is shown: 1 on ones, 2 on twos …
 * @param lead frames a reveal's frame goes before its sounding accent; negative: after
 * @param closedHold frames the closed frame is held before a movement, where a cut is chosen for it
 * @param tail from the end of the last sounding bar to the end of the film, 0 s or more
 * @param width of the frame in pixels
 * @param height of the frame in pixels
 * @param pop a one-frame tone sounds so long before the first frame, more than 0; empty for none
 * @param paper what the sheets are printed on
 */
public record Film(
    FrameRate rate,
    Timecode firstFrame,
    Seconds musicStarts,
    MusicFrom musicFrom,
    int framesPerPhotograph,
    int lead,
    int closedHold,
    Seconds tail,
    int width,
    int height,
    Optional<Seconds> pop,
    Paper paper) {

  /** Where the pop sounds unless the plan says otherwise (common practice, no source). */
  public static final Seconds USUAL_POP = Seconds.of(2);

  public Film {
    if (framesPerPhotograph < 1
        || closedHold < 0
        || musicStarts.signum() < 0
        || tail.signum() < 0) {
      throw new IllegalArgumentException("film settings out of range");
    }
  }

  /** The film frame on which the music starts. */
  public long musicStartFrame() {
    return rate.nearestFrame(musicStarts);
  }

  /** The timecode of a film frame. */
  public Timecode timecode(long frame) {
    return Timecode.ofFrame(rate, firstFrame.frame() + frame);
  }

  /** What counts as the start of the music. */
  public enum MusicFrom {
    /** The file's first tick. */
    START_OF_FILE,
    /** The first sounding note. */
    FIRST_NOTE
  }

  /** Paper the sheets are laid out for: ISO 216, and 8½ by 11 inches (ANSI Y14.1). */
  public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    Paper(double width, double height) {
      this.width = width;
      this.height = height;
    }

    /** Its short side in millimeters. */
    public double width() {
      return width;
    }

    /** Its long side in millimeters. */
    public double height() {
      return height;
    }
  }
}

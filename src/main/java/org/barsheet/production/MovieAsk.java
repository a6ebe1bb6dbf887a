package org.barsheet.production;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.barsheet.movie.Ffmpeg;
import org.barsheet.recording.FfmpegProgram;

/**
 * What {@link Production#make} draws on request only: the film as a movie.
 *
 * @param movie whether a movie is written
 * @param guideVideos whether a guide video is written for each performer
 * @param frames the folder that single frames are written into, as PNG
 * @param ffmpeg the program that writes movies, where it is not the one on the PATH
 * @param from the place it begins at; at the film's first frame where none is named
 * @param to the place it ends before; at the film's end where none is named
 * @param width of its frame in pixels; half the film's where none is named
 * @param clean whether no words stand below the image
 * @param click whether head, pop and click are wanted, with sound kept sample for sample
 */
public record MovieAsk(
    boolean movie,
    boolean guideVideos,
    Optional<Path> frames,
    Optional<Path> ffmpeg,
    Optional<String> from,
    Optional<String> to,
    OptionalInt width,
    boolean clean,
    boolean click) {

  /** Nothing of it. */
  public static final MovieAsk NONE =
      new MovieAsk(
          false,
          false,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalInt.empty(),
          false,
          false);

  /**
   * The program that writes movies: where one is asked for it has to be there, for single frames it
   * only reads performers' clips.
   *
   * @throws org.barsheet.input.InputException if it is needed and isn't there
   */
  Optional<Ffmpeg> findFfmpeg() {
    if (movie || guideVideos || ffmpeg.isPresent()) {
      return Optional.of(Ffmpeg.find(ffmpeg));
    }
    return frames.isPresent() ? FfmpegProgram.onPath().map(Ffmpeg::new) : Optional.empty();
  }
}

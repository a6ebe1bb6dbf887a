package org.barsheet.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.barsheet.production.MovieAsk;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The options that draw the film. */
final class MovieOptions {

  private static final int NARROWEST = 64;
  private static final int WIDEST = 7680;

  @Option(
      names = "--movie",
      description = {
        "Make a movie of the film so far (MP4; needs ffmpeg): drawings, planned movements,",
        "and photographs and clips that are there; the recording or the guide as its sound."
      })
  private boolean movie;

  @Option(
      names = "--guide-videos",
      description = {
        "Make a guide video for each performer to play along with, beside their call sheet (MP4;",
        "needs ffmpeg)."
      })
  private boolean guideVideos;

  @Option(
      names = "--frames",
      paramLabel = "DIR",
      description = "Write the movie's frames into this folder, one PNG each.")
  private Optional<Path> frames = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "PLACE",
      description = "Begin the movie here: any place of the film, also \"panel 7\".")
  private Optional<String> from = Optional.empty();

  @Option(names = "--to", paramLabel = "PLACE", description = "End the movie before this place.")
  private Optional<String> to = Optional.empty();

  @Option(
      names = "--width",
      paramLabel = "PIXELS",
      description = "Width of the movie; by default half of the film's frame size.")
  private Optional<Integer> width = Optional.empty();

  @Option(names = "--clean", description = "Leave out the strip with timecode, panel and bar.")
  private boolean clean;

  @Option(
      names = "--click",
      description = {
        "Begin the movie with head, pop and count-in, and add pop and click as a second track, all",
        "sound uncompressed (MOV, for editing)."
      })
  private boolean click;

  @Option(
      names = "--ffmpeg",
      paramLabel = "FILE",
      description = "The ffmpeg to make movies with; by default the first on the PATH.")
  private Optional<Path> ffmpeg = Optional.empty();

  /**
   * What is asked for.
   *
   * @throws ParameterException if an option says how a movie is to be that nobody asked for
   */
  MovieAsk ask(CommandLine command) {
    boolean draws = movie || frames.isPresent();
    Stream.of(
            new Told("--from", from.isPresent(), draws),
            new Told("--to", to.isPresent(), draws),
            new Told("--width", width.isPresent(), draws),
            new Told("--clean", clean, draws),
            new Told("--click", click, movie))
        .filter(told -> told.given() && !told.serves())
        .findFirst()
        .ifPresent(
            told -> {
              throw new ParameterException(
                  command, told.name() + " says how a movie is to be; ask for one with --movie");
            });
    width
        .filter(pixels -> pixels < NARROWEST || pixels > WIDEST)
        .ifPresent(
            pixels -> {
              throw new ParameterException(
                  command, "--width: " + pixels + " isn't from " + NARROWEST + " to " + WIDEST);
            });
    return new MovieAsk(
        movie,
        guideVideos,
        frames,
        ffmpeg,
        from,
        to,
        width.map(OptionalInt::of).orElse(OptionalInt.empty()),
        clean,
        click);
  }

  /** An option, whether it was given, and whether there is something it is about. */
  private record Told(String name, boolean given, boolean serves) {}
}

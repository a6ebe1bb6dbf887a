package org.barsheet.movie;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.recording.FfmpegProgram;

/**
 * The program that turns frames into a movie. It is no part of this one: people install it.
 *
 * @param program its file
 */
public record Ffmpeg(Path program) {

  private static final String REMEDY =
      "install ffmpeg, name it with --ffmpeg FILE, or write the frames as PNG with --frames DIR";

  /**
   * The one that was named, or else the first on the PATH.
   *
   * @throws InputException if there is none, or it doesn't run
   */
  public static Ffmpeg find(Optional<Path> named) {
    Path program = named.or(FfmpegProgram::onPath).orElseThrow(Ffmpeg::missing);
    return new Ffmpeg(program).thatRuns();
  }

  private static InputException missing() {
    return new InputException(
        Problem.ofFile("", "ffmpeg, which makes the movie, isn't installed", REMEDY));
  }

  private Ffmpeg thatRuns() {
    try {
      Process asked =
          new ProcessBuilder(program.toString(), "-hide_banner", "-version")
              .redirectErrorStream(true)
              .start();
      asked.getOutputStream().close();
      asked.getInputStream().readAllBytes();
      if (asked.waitFor() == 0) {
        return this;
      }
    } catch (IOException doesNotStart) {
      // Told below.
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    throw new InputException(Problem.ofFile(program.toString(), "this ffmpeg doesn't run", REMEDY));
  }

  /** Starts it with some arguments; it says only what goes wrong. */
  Process start(List<String> arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(program.toString());
    command.addAll(List.of("-hide_banner", "-nostats", "-v", "error", "-y"));
    command.addAll(arguments);
    return new ProcessBuilder(command).start();
  }
}

package org.barsheet.movie;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

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
    Path program = named.or(Ffmpeg::onPath).orElseThrow(Ffmpeg::missing);
    return new Ffmpeg(program).thatRuns();
  }

  private static InputException missing() {
    return new InputException(
        Problem.ofFile("", "ffmpeg, which makes the movie, isn't installed", REMEDY));
  }

  /** The first on the PATH. */
  public static Optional<Path> onPath() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Arrays.stream(path.split(File.pathSeparator))
        .filter(folder -> !folder.isEmpty())
        .flatMap(folder -> Stream.of("ffmpeg", "ffmpeg.exe").flatMap(name -> file(folder, name)))
        .filter(file -> Files.isRegularFile(file) && Files.isExecutable(file))
        .findFirst();
  }

  private static Stream<Path> file(String folder, String name) {
    try {
      return Stream.of(Path.of(folder, name));
    } catch (InvalidPathException noFolder) {
      return Stream.empty();
    }
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

  /** How a file is named to it: never as an option, nor as an address of a network. */
  static String file(Path file) {
    return "file:" + file.toAbsolutePath();
  }
}

package org.barsheet.recording;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

/** Where ffmpeg is: it is no part of this program, people install it. */
public final class FfmpegProgram {

  private FfmpegProgram() {}

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

  /** How a file is named to it: never as an option, nor as an address of a network. */
  public static String named(Path file) {
    return "file:" + file.toAbsolutePath();
  }
}

package org.barsheet.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads files that people give us. What is no regular file is refused before it is opened (a pipe
 * may never end), and what is too large before it is read.
 */
public final class GivenFile {

  private static final int MEGABYTE = 1_000_000;

  private GivenFile() {}

  /**
   * All of a file.
   *
   * @throws InputException if it is not there, no regular file, too large, or cannot be read
   */
  public static byte[] bytes(Path file, Limit limit) {
    check(file, limit);
    byte[] bytes = start(file, limit, limit.bytes() + 1);
    if (bytes.length > limit.bytes()) {
      throw new InputException(tooLarge(file, bytes.length, limit)); // it has just grown
    }
    return bytes;
  }

  /**
   * The first bytes of a file of whatever size, fewer where it has fewer.
   *
   * @throws InputException if it is not there, no regular file, or cannot be read
   */
  public static byte[] start(Path file, Limit limit, int count) {
    throwIfAny(otherThanFile(file, limit));
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(count);
    } catch (IOException unreadable) {
      throw new InputException(unreadable(file));
    }
  }

  /**
   * Makes sure that a file is there, a regular file, and no larger than may be.
   *
   * @throws InputException if it is not
   */
  public static void check(Path file, Limit limit) {
    throwIfAny(problem(file, limit));
  }

  private static void throwIfAny(Optional<Problem> problem) {
    if (problem.isPresent()) {
      throw new InputException(problem.get());
    }
  }

  /** What keeps a file from being read, seen from outside; nothing where it may be opened. */
  public static Optional<Problem> problem(Path file, Limit limit) {
    return otherThanFile(file, limit).or(() -> tooLarge(file, limit));
  }

  private static Optional<Problem> otherThanFile(Path file, Limit limit) {
    String name = file.toString();
    if (Files.isDirectory(file)) {
      String sentence = "this is a folder, not " + limit.what();
      return Optional.of(Problem.ofFile(name, sentence, limit.wanted()));
    }
    if (!Files.exists(file)) {
      String remedy = "check the name and the folder";
      return Optional.of(Problem.ofFile(name, "there is no such file", remedy));
    }
    if (!Files.isRegularFile(file)) {
      String sentence = "this is a pipe or a device, not " + limit.what();
      String remedy = "copy its contents into a file and name that file";
      return Optional.of(Problem.ofFile(name, sentence, remedy));
    }
    return Optional.empty();
  }

  private static Optional<Problem> tooLarge(Path file, Limit limit) {
    try {
      long size = Files.size(file);
      return size > limit.bytes() ? Optional.of(tooLarge(file, size, limit)) : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.of(unreadable(file));
    }
  }

  private static Problem unreadable(Path file) {
    return Problem.ofFile(
        file.toString(), "the file cannot be read", "check that you're allowed to read it");
  }

  private static Problem tooLarge(Path file, long size, Limit limit) {
    long megabytes = (size + MEGABYTE - 1) / MEGABYTE;
    String sentence =
        String.format(
            Locale.ROOT,
            "the file is too large: %,d MB; %s may have %,d MB",
            megabytes,
            limit.what(),
            limit.megabytes());
    return Problem.ofFile(file.toString(), sentence, limit.remedy());
  }
}

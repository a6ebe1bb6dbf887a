package org.barsheet.input;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: beside its target first, then moved into place, so that a
 * failure leaves the old file as it was and two runs at once never mix their bytes.
 */
public final class SafeFile {

  private static final int MOST_NEIGHBOURS = 1000;

  private SafeFile() {}

  /** What a file is to hold, written from front to back. */
  @FunctionalInterface
  public interface Content {

    /**
     * Writes all of it; the stream is buffered and closed by the caller.
     *
     * @throws IOException if the stream does not take it
     */
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes a file from its bytes.
   *
   * @throws InputException if the place cannot be written
   */
  public static void write(Path target, byte[] bytes) {
    write(target, out -> out.write(bytes));
  }

  /**
   * Writes a file as a stream. A link is followed: the file it points to is replaced.
   *
   * @throws InputException if the place cannot be written
   */
  public static void write(Path target, Content content) {
    try {
      writeBeside(linkedFile(target), content);
    } catch (IOException | ReadOnlyFileSystemException refused) {
      throw new InputException(problem(target, refused));
    }
  }

  private static Path linkedFile(Path target) throws IOException {
    Path absolute = target.toAbsolutePath();
    return Files.isSymbolicLink(absolute) && Files.exists(absolute)
        ? absolute.toRealPath()
        : absolute;
  }

  private static void writeBeside(Path target, Content content) throws IOException {
    if (Files.isDirectory(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Path beside = newNeighbour(target);
    try {
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside), 1 << 16)) {
        content.writeTo(out);
      }
      moveIntoPlace(beside, target);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** An empty file beside the target, ours alone, with the permissions any new file gets. */
  private static Path newNeighbour(Path target) throws IOException {
    long process = ProcessHandle.current().pid();
    for (int attempt = 0; ; attempt++) {
      Path beside = target.resolveSibling(".barsheet-" + process + "-" + attempt + ".part");
      try {
        Files.newOutputStream(beside, StandardOpenOption.CREATE_NEW).close();
        return beside;
      } catch (FileAlreadyExistsException taken) {
        if (attempt == MOST_NEIGHBOURS) {
          throw taken;
        }
      }
    }
  }

  private static void moveIntoPlace(Path beside, Path target) throws IOException {
    try {
      Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException unsupported) {
      Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** What to tell a person whose file could not be written. */
  public static Problem problem(Path target, Exception refused) {
    String file = target.toString();
    if (Files.isDirectory(target)) {
      return Problem.ofFile(
          file, "a folder stands where this file is to go", "move the folder, or choose another");
    }
    if (refused instanceof NoSuchFileException) {
      return Problem.ofFile(file, "there is no folder to write this file into", "make the folder");
    }
    if (refused instanceof AccessDeniedException
        || refused instanceof ReadOnlyFileSystemException) {
      return Problem.ofFile(
          file, "this file may not be written", "choose a folder that you may write into");
    }
    return Problem.ofFile(
        file,
        "this file cannot be written (" + refused.getMessage() + ")",
        "check that the disk has room and the folder can be written");
  }
}

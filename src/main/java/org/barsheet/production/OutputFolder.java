package org.barsheet.production;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.input.SafeFile;

/**
 * A folder that sheets are written into: all of them or none. Every file is first written beside
 * its place under a hidden name; {@link #publish} moves them into place when the last one is whole.
 * One program at a time may hold the folder.
 */
final class OutputFolder implements AutoCloseable {

  private static final String LOCK = ".barsheet.lock";

  private final Path folder;
  private final FileChannel lockFile;
  private final Map<Path, Staged> staged = new LinkedHashMap<>();
  private final List<Path> made = new ArrayList<>();

  /**
   * A file written beside its place.
   *
   * @param part where it is
   * @param mayStandAt whether it may go to its place, whatever stands there now
   */
  private record Staged(Path part, Predicate<Path> mayStandAt) {}

  private OutputFolder(Path folder, FileChannel lockFile) {
    this.folder = folder;
    this.lockFile = lockFile;
  }

  /**
   * Opens a folder, making it if need be.
   *
   * @throws InputException if it cannot be written into or another program is writing into it
   */
  static OutputFolder open(Path folder) {
    try {
      Files.createDirectories(folder);
      FileChannel channel =
          FileChannel.open(
              folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (!holds(channel, folder.resolve(LOCK))) {
        channel.close();
        throw new InputException(
            Problem.ofFile(
                folder.toString(),
                "another barsheet is writing into this folder",
                "wait until it is done, or give another folder with --out"));
      }
      return new OutputFolder(folder, channel);
    } catch (IOException | ReadOnlyFileSystemException refused) {
      throw new InputException(problem(folder, refused));
    }
  }

  private static Problem problem(Path folder, Exception refused) {
    String name = folder.toString();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      return Problem.ofFile(
          name, "a file stands where this folder is to go", "give another folder with --out");
    }
    if (refused instanceof AccessDeniedException
        || refused instanceof ReadOnlyFileSystemException) {
      return mayNotWrite(name);
    }
    boolean readOnly = Files.isDirectory(folder) && !Files.isWritable(folder);
    return readOnly
        ? mayNotWrite(name)
        : Problem.ofFile(
            name,
            "this folder cannot be written into (" + refused.getMessage() + ")",
            "check that the disk has room, or give another folder with --out");
  }

  private static Problem mayNotWrite(String folder) {
    return Problem.ofFile(
        folder, "this folder may not be written into", "give another folder with --out");
  }

  /**
   * Whether we hold the lock, on the file that stands there now: its last holder may have removed
   * the one we opened. So we make ours as long as our process's number, and ask how long the one
   * that stands there is. It must not be opened once more: closing it again would let go of the
   * lock (POSIX, fcntl).
   */
  private static boolean holds(FileChannel channel, Path lock) throws IOException {
    try {
      if (channel.tryLock() == null) {
        return false;
      }
    } catch (OverlappingFileLockException heldByThisProgram) {
      return false;
    }
    long number = ProcessHandle.current().pid();
    channel.truncate(0).write(ByteBuffer.allocate(1), number - 1);
    return Files.exists(lock) && Files.size(lock) == number;
  }

  Path folder() {
    return folder;
  }

  /**
   * Writes one file beside its place.
   *
   * @param name its path within the folder, {@code calls/cello.html}
   */
  void write(String name, SafeFile.Content content) {
    write(name, content, whateverStandsThere -> true);
  }

  /**
   * Writes one file beside a place that may be somebody else's by the time it is to go there.
   *
   * @param name its path within the folder
   * @param mayStandAt asked once more just before the file goes to its place; where it says no,
   *     what stands there stays
   */
  void write(String name, SafeFile.Content content, Predicate<Path> mayStandAt) {
    Path target = folder.resolve(name);
    try {
      makeFolder(parentOf(target));
      Path part = parentOf(target).resolve("." + target.getFileName() + ".part");
      staged.put(target, new Staged(part, mayStandAt));
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
        content.writeTo(out);
      }
    } catch (IOException e) {
      throw unwritable(target, e);
    } catch (UncheckedIOException e) {
      throw unwritable(target, e);
    }
  }

  private void makeFolder(Path inside) throws IOException {
    if (Files.exists(inside) && !Files.isDirectory(inside)) {
      throw new InputException(
          Problem.ofFile(
              inside.toString(),
              "a file stands where a folder of this name is to go",
              "move that file away, or give another folder with --out"));
    }
    if (!Files.exists(inside)) {
      Files.createDirectories(inside);
      made.add(inside);
    }
  }

  private Path parentOf(Path target) {
    Path parent = target.getParent();
    return parent == null ? folder : parent;
  }

  /**
   * Moves every file written so far into its place.
   *
   * @return the files that went there
   * @throws InputException if a folder stands in the place of one; then none is moved
   */
  List<Path> publish() {
    for (Path target : staged.keySet()) {
      if (Files.isDirectory(target)) {
        throw unwritable(target, new FileAlreadyExistsException(target.toString()));
      }
    }
    List<Path> written = new ArrayList<>();
    for (Map.Entry<Path, Staged> file : staged.entrySet()) {
      if (moved(file.getValue(), file.getKey())) {
        written.add(file.getKey());
      }
    }
    staged.clear();
    return List.copyOf(written);
  }

  private static boolean moved(Staged file, Path target) {
    try {
      boolean may = file.mayStandAt().test(target);
      if (may) {
        Files.move(file.part(), target, StandardCopyOption.REPLACE_EXISTING);
      } else {
        Files.deleteIfExists(file.part());
      }
      return may;
    } catch (IOException e) {
      throw unwritable(target, e);
    }
  }

  private static InputException unwritable(Path file, Exception cause) {
    return new InputException(SafeFile.problem(file, cause));
  }

  private static void deleteIfEmpty(Path inside) throws IOException {
    try {
      Files.deleteIfExists(inside);
    } catch (DirectoryNotEmptyException inUse) {
      // Something was published into it, so it stays.
    }
  }

  /** Removes what was not published, with the folders made for it, and lets the folder go. */
  @Override
  public void close() {
    try (lockFile) {
      for (Staged file : staged.values()) {
        Files.deleteIfExists(file.part());
      }
      for (Path inside : made) {
        deleteIfEmpty(inside);
      }
      Files.deleteIfExists(folder.resolve(LOCK));
    } catch (IOException e) {
      throw unwritable(folder, e);
    }
  }
}

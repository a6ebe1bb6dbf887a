package org.barsheet.production;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
  private final Map<Path, Path> staged = new LinkedHashMap<>();

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
    } catch (IOException e) {
      throw unwritable(folder, e);
    }
  }

  /**
   * Whether we hold the lock, on the file that stands there now: its last holder may have removed
   * the one we opened, so we write our name through the channel and look for it by path.
   */
  private static boolean holds(FileChannel channel, Path lock) throws IOException {
    try {
      if (channel.tryLock() == null) {
        return false;
      }
    } catch (OverlappingFileLockException heldByThisProgram) {
      return false;
    }
    byte[] name = Long.toString(ProcessHandle.current().pid()).getBytes(StandardCharsets.US_ASCII);
    channel.truncate(0).write(ByteBuffer.wrap(name));
    return Files.exists(lock) && Arrays.equals(Files.readAllBytes(lock), name);
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
    Path target = folder.resolve(name);
    try {
      Files.createDirectories(parentOf(target));
      Path part = parentOf(target).resolve("." + target.getFileName() + ".part");
      staged.put(target, part);
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
        content.writeTo(out);
      }
    } catch (IOException e) {
      throw unwritable(target, e);
    } catch (UncheckedIOException e) {
      throw unwritable(target, e);
    }
  }

  private Path parentOf(Path target) {
    Path parent = target.getParent();
    return parent == null ? folder : parent;
  }

  /** Moves every file written so far into its place. */
  List<Path> publish() {
    for (Map.Entry<Path, Path> file : staged.entrySet()) {
      try {
        Files.move(file.getValue(), file.getKey(), StandardCopyOption.REPLACE_EXISTING);
      } catch (IOException e) {
        throw unwritable(file.getKey(), e);
      }
    }
    List<Path> written = List.copyOf(staged.keySet());
    staged.clear();
    return written;
  }

  private static InputException unwritable(Path file, Exception cause) {
    return new InputException(SafeFile.problem(file, cause));
  }

  /** Removes what was not published and lets the folder go. */
  @Override
  public void close() {
    try (lockFile) {
      for (Path part : staged.values()) {
        Files.deleteIfExists(part);
      }
      Files.deleteIfExists(folder.resolve(LOCK));
    } catch (IOException e) {
      throw unwritable(folder, e);
    }
  }
}

package org.barsheet.production.publish;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Keeps other programs from writing into a folder. The system lets go of it when the program ends,
 * however it ends.
 */
final class FolderLock implements AutoCloseable {

  private final Path file;
  private final FileChannel channel;
  private final Disk disk;

  private FolderLock(Path file, FileChannel channel, Disk disk) {
    this.file = file;
    this.channel = channel;
    this.disk = disk;
  }

  /** The lock of a folder, or nothing where another program has it. */
  static Optional<FolderLock> take(Path folder, Disk disk) throws IOException {
    Path file = folder.resolve(".barsheet.lock");
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isPlain(file)) {
      throw Aside.inTheWay(file);
    }
    disk.step();
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    if (holds(channel, file)) {
      return Optional.of(new FolderLock(file, channel, disk));
    }
    channel.close();
    return Optional.empty();
  }

  /** Whether a file goes by this name only: it is written into, which another name would show. */
  private static boolean isPlain(Path file) throws IOException {
    boolean tellsNames = file.getFileSystem().supportedFileAttributeViews().contains("unix");
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && (!tellsNames
            || Integer.valueOf(1)
                .equals(Files.getAttribute(file, "unix:nlink", LinkOption.NOFOLLOW_LINKS)));
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

  @Override
  public void close() throws IOException {
    try (channel) {
      disk.delete(file);
    }
  }
}

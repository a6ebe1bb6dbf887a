package org.barsheet.desk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;
import org.barsheet.text.Sha256;

/**
 * Keeps a plan to one desk. What says so lies in the system's folder for temporary files, for this
 * user's eyes only, and ends with the program however that ends.
 */
final class OneDesk implements AutoCloseable {

  /** The byte that is locked: far behind the address, which others read meanwhile. */
  private static final long LOCKED = 1L << 20;

  private static final int LONGEST_ADDRESS = 400;

  private final FileChannel channel;

  private OneDesk(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * The right to a plan, or nothing where another desk has it.
   *
   * @param plan real path of the plan's file
   */
  static Optional<OneDesk> take(Path plan) throws IOException {
    FileChannel channel = open(plan);
    try {
      if (channel.tryLock(LOCKED, 1, false) != null) {
        return Optional.of(new OneDesk(channel));
      }
    } catch (OverlappingFileLockException heldByThisProgram) {
      // Another desk of this program has it.
    }
    channel.close();
    return Optional.empty();
  }

  private static FileChannel open(Path plan) throws IOException {
    String name = Sha256.hex(plan.toString().getBytes(StandardCharsets.UTF_8)).substring(0, 16);
    String user = System.getProperty("user.name", "").replaceAll("[^A-Za-z0-9]", "-");
    Path file = Path.of(System.getProperty("java.io.tmpdir"), "barsheet-desk-" + user + "-" + name);
    boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
    FileAttribute<?>[] own =
        posix
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    Set<OpenOption> how =
        Set.of(
            StandardOpenOption.CREATE,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS);
    return FileChannel.open(file, how, own);
  }

  /** Tells the address to whoever comes later. */
  void tell(String address) throws IOException {
    channel.truncate(0).write(ByteBuffer.wrap(address.getBytes(StandardCharsets.UTF_8)), 0);
  }

  /** The address of the desk that has a plan, "" where it has not told it yet. */
  static String address(Path plan) throws IOException {
    try (FileChannel channel = open(plan)) {
      ByteBuffer told = ByteBuffer.allocate(LONGEST_ADDRESS);
      int length = Math.max(0, channel.read(told, 0));
      return new String(told.array(), 0, length, StandardCharsets.UTF_8);
    }
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      channel.truncate(0);
    }
  }
}

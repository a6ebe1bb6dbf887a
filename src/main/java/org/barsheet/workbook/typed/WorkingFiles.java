package org.barsheet.workbook.typed;

import java.io.Closeable;
import java.io.File;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.apache.poi.util.TempFileCreationStrategy;

/**
 * A folder of our own for what the spreadsheet library sets aside while it writes; by itself it
 * shares one folder between all people of a machine, which only the first of them may write into. A
 * lock in it says that its program is still running.
 */
public final class WorkingFiles implements TempFileCreationStrategy, Closeable {

  private static final String NAME = "barsheet-";
  private static final String LOCK = "lock";

  private final Path folder;
  private final FileChannel lock;

  public WorkingFiles() throws IOException {
    folder = Files.createTempDirectory(ours());
    Path unlocked = folder.resolve(LOCK + ".part");
    lock = FileChannel.open(unlocked, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    lock.lock();
    // Others see it when it is locked, never before.
    Files.move(unlocked, folder.resolve(LOCK));
  }

  private static String ours() {
    return NAME + ProcessHandle.current().pid() + "-";
  }

  /** Removes the folders of programs that were killed, among those in a folder of such folders. */
  public static void clearDead(Path all) {
    try (DirectoryStream<Path> folders = Files.newDirectoryStream(all, NAME + "*")) {
      for (Path folder : folders) {
        // Opening the lock of one of our own and closing it again would let go of it (POSIX).
        if (!String.valueOf(folder.getFileName()).startsWith(ours()) && isDead(folder)) {
          clear(folder);
        }
      }
    } catch (IOException somebodyElses) {
      // They are in nobody's way.
    }
  }

  private static boolean isDead(Path folder) {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (FileChannel lock =
        FileChannel.open(
            folder.resolve(LOCK), StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      return lock.tryLock() != null;
    } catch (IOException noneOrNotOurs) {
      return false;
    }
  }

  private static void clear(Path folder) throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder)) {
      for (Path file : left) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(folder);
  }

  @Override
  public File createTempFile(String prefix, String suffix) throws IOException {
    return Files.createTempFile(folder, prefix, suffix).toFile();
  }

  @Override
  public File createTempDirectory(String prefix) throws IOException {
    return Files.createTempDirectory(folder, prefix).toFile();
  }

  @Override
  public void close() throws IOException {
    lock.close();
    clear(folder);
  }
}

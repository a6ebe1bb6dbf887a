package org.barsheet.production.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/**
 * Every change that publishing makes to a disk, one method each. None follows a link that stands at
 * the end of a path. A test may stand in the way of any of them by {@link #step}.
 */
public class Disk {

  /** Called before every change. */
  protected void step() throws IOException {}

  /** A new file, ours alone; a file or link of its name is refused. */
  final FileChannel create(Path file) throws IOException {
    step();
    return FileChannel.open(
        file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
  }

  /** Waits until a disk has taken what was changed: its slowest part. */
  protected void force(FileChannel file) throws IOException {
    file.force(true);
  }

  /** Waits until what was written into a file has reached the disk. */
  final void settle(FileChannel file) throws IOException {
    step();
    force(file);
  }

  /**
   * Waits until the names in a folder have reached the disk, where the system can: some (Windows)
   * open no folder.
   */
  final void settleNames(Path folder) throws IOException {
    step();
    try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
      force(names);
    } catch (IOException knowsNoSuchThing) {
      // Or the folder went away again, with its names.
    }
  }

  /** Makes a folder in one that is there. */
  final void makeFolder(Path folder) throws IOException {
    step();
    Files.createDirectory(folder);
  }

  /** Gives a file a second name; not every disk can. */
  protected void link(Path file, Path second) throws IOException {
    Files.createLink(second, file);
  }

  /** Gives a file a second name, or where the disk knows no such thing, a copy. */
  final void keep(Path file, Path second) throws IOException {
    step();
    if (!Files.isSymbolicLink(file)) {
      try {
        link(file, second);
        return;
      } catch (IOException | UnsupportedOperationException noSecondNames) {
        // A copy does as well.
      }
    }
    Files.copy(file, second, LinkOption.NOFOLLOW_LINKS, StandardCopyOption.COPY_ATTRIBUTES);
    if (!Files.isSymbolicLink(second)) {
      try (FileChannel copy = FileChannel.open(second, StandardOpenOption.WRITE)) {
        force(copy);
      }
    }
  }

  /** Moves a file to a place in one instant, whatever file or link stands there. */
  final void replace(Path file, Path place) throws IOException {
    step();
    Files.move(file, place, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Moves a file to a place where nothing stands. */
  final void add(Path file, Path place) throws IOException {
    step();
    Files.move(file, place);
  }

  /** Removes a file or a link, if it is there. */
  final void delete(Path file) throws IOException {
    step();
    Files.deleteIfExists(file);
  }

  /** Removes a folder, if it is there and empty. */
  final void deleteIfEmpty(Path folder) throws IOException {
    step();
    try {
      Files.deleteIfExists(folder);
    } catch (DirectoryNotEmptyException inUse) {
      // Somebody's files are in it.
    }
  }

  /** Removes a folder with all it holds, if it is there; what links in it lead to stays. */
  final void deleteWhole(Path folder) throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes found)
              throws IOException {
            delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path inside, @Nullable IOException broken)
              throws IOException {
            delete(inside);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}

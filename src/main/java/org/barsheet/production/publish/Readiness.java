package org.barsheet.production.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.barsheet.input.Problem;

/** Looks whether a file can go to its place, before any file goes to its own. */
final class Readiness {

  private Readiness() {}

  /** The first thing between a folder and a place in it that is no folder, if there is one. */
  static Optional<Path> noFolder(Path folder, String name) {
    Path place = folder;
    for (Path part : folder.getFileSystem().getPath(name)) {
      if (!place.equals(folder)
          && Files.exists(place, LinkOption.NOFOLLOW_LINKS)
          && !Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
        return Optional.of(place);
      }
      place = place.resolve(part);
    }
    return Optional.empty();
  }

  /** What keeps a file from going to its place, if anything does. */
  static Optional<Problem> problem(Path folder, String name) {
    Path place = folder.resolve(name);
    Optional<Path> inTheWay = noFolder(folder, name);
    if (inTheWay.isPresent()) {
      return inTheWay.map(Refused::noFolder);
    }
    if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.of(Refused.file(place, new FileAlreadyExistsException(name)));
    }
    Path within = place.resolveSibling(".");
    if (Files.exists(within) && !Files.isWritable(within)) {
      return Optional.of(Refused.file(place, new AccessDeniedException(name)));
    }
    return Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)
        ? replacing(place)
        : Optional.empty();
  }

  /**
   * A file that is locked or held open by another program cannot be opened for writing either, and
   * opening it changes nothing. One that merely may not be written can still be replaced where
   * names belong to the folder (POSIX); elsewhere (Windows) it cannot.
   */
  private static Optional<Problem> replacing(Path place) {
    try {
      FileChannel.open(place, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS).close();
      return Optional.empty();
    } catch (AccessDeniedException mayNot) {
      boolean namesBelongToFolders =
          place.getFileSystem().supportedFileAttributeViews().contains("posix");
      return namesBelongToFolders
          ? Optional.empty()
          : Optional.of(Refused.replacing(place, mayNot));
    } catch (FileSystemException held) {
      return Optional.of(Refused.replacing(place, held));
    } catch (IOException broken) {
      return Optional.of(Refused.file(place, broken));
    }
  }
}

package org.barsheet.production.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/**
 * Reads files that were published, writing nothing: those of the last act that was carried through,
 * even while another is under way or after it was cut short.
 */
public final class LastSheets {

  private static final int MOST_LOOKS = 100;

  private LastSheets() {}

  /**
   * Reads one file.
   *
   * @param name its path within the folder
   * @param reader may be called again where the file moved while it read
   * @return what was read, or nothing where there is no such file
   */
  public static <T> Optional<T> read(Path folder, String name, Function<Path, T> reader) {
    Optional<Path> place = placeOf(folder, name);
    for (int look = 1; ; look++) {
      Optional<Path> now;
      try {
        Optional<T> read = place.map(reader);
        now = placeOf(folder, name);
        if (now.equals(place) || look == MOST_LOOKS) {
          return read;
        }
      } catch (InputException unreadable) {
        now = placeOf(folder, name);
        if (now.equals(place) || look == MOST_LOOKS) {
          throw unreadable;
        }
      }
      place = now;
    }
  }

  private static Optional<Path> placeOf(Path folder, String name) {
    Aside aside = new Aside(folder);
    Path place = folder.resolve(name);
    Optional<Journal.Entry> underWay;
    try {
      underWay =
          Journal.read(aside).stream()
              .flatMap(journal -> journal.files().stream())
              .filter(entry -> entry.name().equals(name))
              .findFirst();
    } catch (IOException unreadable) {
      throw new InputException(
          Problem.ofFile(
              aside.journal().toString(),
              "this file cannot be read",
              "check that you're allowed to read it"));
    }
    if (underWay.isPresent() && !underWay.get().replaces()) {
      return Optional.empty();
    }
    Path before = aside.before(name);
    boolean replaced = underWay.isPresent() && Files.exists(before, LinkOption.NOFOLLOW_LINKS);
    return Optional.of(replaced ? asSeenFrom(place, before) : place).filter(Files::exists);
  }

  /** A link keeps leading to where it led from its own place. */
  private static Path asSeenFrom(Path place, Path before) {
    try {
      return Files.isSymbolicLink(before)
          ? place.resolveSibling(Files.readSymbolicLink(before))
          : before;
    } catch (IOException goneMeanwhile) {
      return before;
    }
  }
}

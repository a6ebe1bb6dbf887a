package org.barsheet.image;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Whole folders, always in the same order. */
final class Folders {

  private Folders() {}

  /** Every file below a folder, links followed, in order of their names. */
  static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder, FileVisitOption.FOLLOW_LINKS)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  /** Copies every file with its permissions. */
  static void copy(Path from, Path to) throws IOException {
    for (Path file : files(from)) {
      Path copy = to.resolve(from.relativize(file).toString());
      Files.createDirectories(copy.resolveSibling(""));
      Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
    }
  }

  /** Deletes a folder with all that is in it, if it is there. */
  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> all;
    try (Stream<Path> files = Files.walk(folder)) {
      all = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : all) {
      Files.delete(file);
    }
  }
}

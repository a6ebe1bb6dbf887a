package org.barsheet.production.publish;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Names for files that make way for new ones and are kept. */
public final class KeptName {

  private KeptName() {}

  /** {@code quay-kept-1.xlsx} beside {@code quay.xlsx}, or the first such name that is free. */
  public static Path beside(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String ending = name.substring(stem.length());
    int number = 1;
    while (Files.exists(numbered(file, stem, number, ending), LinkOption.NOFOLLOW_LINKS)) {
      number++;
    }
    return numbered(file, stem, number, ending);
  }

  private static Path numbered(Path file, String stem, int number, String ending) {
    return file.resolveSibling(stem + "-kept-" + number + ending);
  }
}

package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.barsheet.production.publish.KeptName;

/** Photographs in the folder beside the plan. */
final class PhotographFiles {

  private static final String ENDING = "(?i)\\.(jpe?g|png)";

  private PhotographFiles() {}

  /** Those of a permanent name, whatever their endings: at most one, unless somebody added some. */
  static List<Path> named(Path folder, String name) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    Pattern pattern = Pattern.compile(Pattern.quote(name) + ENDING);
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> pattern.matcher(String.valueOf(file.getFileName())).matches())
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    }
  }

  static Path keptBeside(Path file) {
    return KeptName.beside(file);
  }
}

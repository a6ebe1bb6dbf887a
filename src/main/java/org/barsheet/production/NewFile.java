package org.barsheet.production;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.production.publish.OutputFolder;

/** Writes a single file where none is, whole or not at all. */
final class NewFile {

  private NewFile() {}

  /**
   * Makes sure that nothing is there yet, and that there is a folder for it.
   *
   * @throws InputException if it cannot be written
   */
  static void check(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw taken(file);
    }
    if (!Files.isDirectory(folder(file))) {
      throw new InputException(
          Problem.ofFile(
              file.toString(), "the folder for this file doesn't exist", "make the folder"));
    }
  }

  /**
   * Writes it.
   *
   * @throws InputException if it cannot be written, or something came there meanwhile
   */
  static void write(Path file, HandoffFile.Content content) {
    String name = String.valueOf(file.getFileName());
    try (OutputFolder out = OutputFolder.open(folder(file))) {
      out.write(name, content, place -> !Files.exists(place, LinkOption.NOFOLLOW_LINKS));
      if (out.publish().isEmpty()) {
        throw taken(file);
      }
    }
  }

  private static Path folder(Path file) {
    Path parent = file.getParent();
    return parent == null ? Path.of("") : parent;
  }

  private static InputException taken(Path file) {
    return new InputException(
        Problem.ofFile(
            file.toString(),
            "a file already has this name",
            "choose another name, or move that file"));
  }
}

package org.barsheet.desk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/** Keeps drawings that a person drops on the page: in the folder drawings beside the plan. */
final class DroppedDrawings {

  private static final String FOLDER = "drawings";

  /** A plain file name, in two parts: what it is called, and its ending. */
  private static final Pattern NAME =
      Pattern.compile("([\\p{L}\\p{N}][\\p{L}\\p{N} ._()-]{0,80})(\\.(?i:png|jpe?g))");

  private static final int MOST_OF_A_NAME = 1000;

  private DroppedDrawings() {}

  /**
   * Writes a drawing under its own name, or with a number where another one is called so.
   *
   * @param folder of the plan
   * @return where it is, as the plan names it
   * @throws InputException if its name is none of a drawing, or it cannot be written
   */
  static String keep(Path folder, String name, byte[] image) {
    Matcher parts = NAME.matcher(name);
    if (!parts.matches()) {
      throw refused(name, "this isn't a drawing the page can show", "drop a PNG or JPEG file");
    }
    try {
      Path drawings = Files.createDirectories(folder.resolve(FOLDER));
      if (!drawings.toRealPath().equals(folder.toRealPath().resolve(FOLDER))) {
        throw refused(
            name, "the folder drawings leads elsewhere", "put the drawing there yourself");
      }
      for (int number = 1; number < MOST_OF_A_NAME; number++) {
        String own = parts.group(1) + (number == 1 ? "" : "-" + number) + parts.group(2);
        if (isWritten(drawings.resolve(own), image)) {
          return FOLDER + "/" + own;
        }
      }
    } catch (IOException full) {
      // Told below.
    }
    throw refused(name, "the drawing can't be written beside the plan", "put it there yourself");
  }

  /** Whether a file holds an image now; one that holds another stays as it is. */
  private static boolean isWritten(Path file, byte[] image) throws IOException {
    try {
      Files.write(file, image, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      return true;
    } catch (FileAlreadyExistsException taken) {
      return Files.isRegularFile(file) && Arrays.equals(Files.readAllBytes(file), image);
    }
  }

  private static InputException refused(String name, String sentence, String remedy) {
    return new InputException(Problem.ofFile(name, sentence, remedy));
  }
}

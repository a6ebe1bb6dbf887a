package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.barsheet.handoff.TimingJsonReader;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Plan;

/** Sheets of a film that lie beside the folder where they are looked for: the plan was renamed. */
final class SheetsElsewhere {

  private SheetsElsewhere() {}

  /**
   * Refuses to go on without what is locked or photographed there.
   *
   * @param folder where no sheets are
   * @throws InputException naming the other folder
   */
  static void refuse(Path folder, Plan plan) {
    Path name = folder.getFileName();
    Optional<Path> other = beside(folder, plan.title());
    if (other.isPresent() && name != null) {
      Path there = other.get();
      throw new InputException(
          Problem.ofFile(
              plan.text().file().toString(),
              "panels are locked or photographed, but "
                  + folder
                  + " holds no sheets; this film's sheets are in "
                  + there,
              "rename that folder to "
                  + name
                  + ", give --out "
                  + there
                  + ", or copy its timing.json"));
    }
  }

  private static Optional<Path> beside(Path folder, String title) {
    Path parent = folder.toAbsolutePath().getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      return Optional.empty();
    }
    try (Stream<Path> folders = Files.list(parent)) {
      List<Path> all =
          folders
              .filter(other -> Files.isRegularFile(other.resolve(EarlierSheets.TIMING)))
              .sorted(Comparator.comparing(Path::toString))
              .toList();
      return all.stream()
          .filter(other -> isOf(title, other))
          .findFirst()
          .map(other -> folder.resolveSibling(String.valueOf(other.getFileName())));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static boolean isOf(String title, Path folder) {
    try {
      return TimingJsonReader.read(folder.resolve(EarlierSheets.TIMING)).title().equals(title);
    } catch (InputException damaged) {
      return false;
    }
  }
}

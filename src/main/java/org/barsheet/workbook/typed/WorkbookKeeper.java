package org.barsheet.workbook.typed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Keeps a workbook that people have worked in before a new one takes its place. */
public final class WorkbookKeeper {

  private static final String ENDING = ".xlsx";

  private WorkbookKeeper() {}

  /**
   * Copies a changed workbook to {@code <name>-kept-1.xlsx}, or the first such name that is free.
   *
   * @return where it is kept, or nothing where there was none or it was as written
   */
  public static Optional<Path> keepIfChanged(Path workbook) throws IOException {
    boolean untouched = Files.isRegularFile(workbook) && SealedWorkbook.isUntouched(workbook);
    return untouched ? Optional.empty() : keep(workbook);
  }

  /**
   * The same with a workbook as it was written.
   *
   * @return where it is kept, or nothing where there was none
   */
  public static Optional<Path> keep(Path workbook) throws IOException {
    if (!Files.isRegularFile(workbook)) {
      return Optional.empty();
    }
    int number = 1;
    while (Files.exists(workbook.resolveSibling(keptName(workbook, number)))) {
      number++;
    }
    return Optional.of(Files.copy(workbook, workbook.resolveSibling(keptName(workbook, number))));
  }

  private static String keptName(Path workbook, int number) {
    String name = workbook.getFileName().toString();
    String bare = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    return bare + "-kept-" + number + ENDING;
  }
}

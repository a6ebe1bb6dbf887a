package org.barsheet.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Keeps a workbook that people have worked in before a new one takes its place. */
final class WorkbookKeeper {

  private WorkbookKeeper() {}

  /**
   * Whether a file is a workbook exactly as we wrote it. A program that saved it without a change
   * counts as having changed it.
   */
  static boolean isAsWritten(Path workbook) throws IOException {
    try (ZipFile zip = new ZipFile(workbook.toFile())) {
      ZipEntry kept = zip.getEntry(Fingerprint.KEPT_IN);
      if (kept == null) {
        return false;
      }
      String properties =
          new String(zip.getInputStream(kept).readAllBytes(), StandardCharsets.UTF_8);
      return properties.contains(Fingerprint.of(workbook));
    } catch (java.util.zip.ZipException noZip) {
      return false;
    }
  }

  /**
   * Moves a changed workbook to {@code <name>-kept-1.xlsx}, or the first such name that is free.
   *
   * @return where it is kept, or nothing where there was none or it was as written
   */
  static Optional<Path> keepIfChanged(Path workbook) throws IOException {
    if (!Files.isRegularFile(workbook) || isAsWritten(workbook)) {
      return Optional.empty();
    }
    for (int number = 1; ; number++) {
      Path kept = workbook.resolveSibling(keptName(workbook, number));
      if (!Files.exists(kept)) {
        return Optional.of(Files.move(workbook, kept));
      }
    }
  }

  private static String keptName(Path workbook, int number) {
    String name = workbook.getFileName().toString();
    String bare = name.endsWith(".xlsx") ? name.substring(0, name.length() - 5) : name;
    return bare + "-kept-" + number + ".xlsx";
  }
}

package org.barsheet.production;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/**
 * Sees that a workbook is open in a spreadsheet program, by the file that such programs put beside
 * what they have open: {@code .~lock.NAME#} or {@code ~$NAME} (common practice, no source). A
 * program that died may have left it there.
 */
final class OpenWorkbook {

  private OpenWorkbook() {}

  static void refuse(Path workbook) {
    String name = String.valueOf(workbook.getFileName());
    Stream.of(".~lock." + name + "#", "~$" + name)
        .filter(mark -> Files.exists(workbook.resolveSibling(mark), LinkOption.NOFOLLOW_LINKS))
        .findFirst()
        .ifPresent(
            mark -> {
              throw new InputException(
                  Problem.ofFile(
                      workbook.toString(),
                      "this workbook is open in a spreadsheet program (" + mark + " is beside it)",
                      "close it there, or go on with --anyway"));
            });
  }
}

package org.barsheet.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.barsheet.exposure.FilmSheet;

/** Writes the workbook of a film. */
public final class WorkbookWriter {

  private WorkbookWriter() {}

  /**
   * Writes the workbook beside its target and moves it into place, so that a failure leaves the old
   * one whole. A workbook that was changed since it was written is kept under another name first.
   * The same film sheet gives the same bytes.
   *
   * @param film what to print
   * @param target where to, a name ending in {@code .xlsx} in a folder that exists
   * @return where a changed workbook is kept now, if there was one
   * @throws IOException if the workbook cannot be written
   */
  public static Optional<Path> write(FilmSheet film, Path target) throws IOException {
    Path raw = target.resolveSibling("." + target.getFileName() + ".raw");
    Path ready = target.resolveSibling("." + target.getFileName() + ".ready");
    try {
      try (OutputStream out = Files.newOutputStream(raw)) {
        writeSheets(film, out);
      }
      SealedWorkbook.seal(raw, ready);
      Optional<Path> kept = WorkbookKeeper.keepIfChanged(target);
      Files.move(
          ready, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
      return kept;
    } finally {
      Files.deleteIfExists(raw);
      Files.deleteIfExists(ready);
    }
  }

  private static void writeSheets(FilmSheet film, OutputStream out) throws IOException {
    try (Book book = new Book(film)) {
      FilmWorksheet.write(book);
      TimelineWorksheet.write(book);
      MusicWorksheet.write(book);
      ExposureWorksheet.write(book);
      CuesWorksheet.write(book);
      OpeningsWorksheet.write(book);
      BarsWorksheet.write(book);
      book.writeTo(out);
    }
  }
}

package org.barsheet.production;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.workbook.TypedCells;
import org.barsheet.workbook.WorkbookWriter;

/** A workbook that is made while the other files are written: it takes as long as all of them. */
final class MeanwhileWorkbook {

  private final CompletableFuture<byte[]> bytes;

  private MeanwhileWorkbook(CompletableFuture<byte[]> bytes) {
    this.bytes = bytes;
  }

  /**
   * Begins to make the workbook of a film.
   *
   * @param before the workbook it takes the place of, where there is one: what people typed into it
   *     is carried over
   */
  static MeanwhileWorkbook of(FilmSheet film, Path before) {
    return new MeanwhileWorkbook(CompletableFuture.supplyAsync(() -> bytes(film, before)));
  }

  private static byte[] bytes(FilmSheet film, Path before) {
    try {
      return WorkbookWriter.bytes(film, TypedCells.read(before));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * Begins to load the spreadsheet library, so that it is there when the film is. Nothing depends
   * on it: what goes wrong here goes wrong again, and is reported, when the workbook is made.
   */
  static void loadLibrary() {
    CompletableFuture<Void> loading = CompletableFuture.runAsync(WorkbookWriter::loadLibrary);
    loading.exceptionally(reportedLater -> null);
  }

  /** Waits for the workbook and writes it out. */
  void writeTo(OutputStream out) throws IOException {
    try {
      out.write(bytes.join());
    } catch (CompletionException broken) {
      if (broken.getCause() instanceof UncheckedIOException disk) {
        throw disk;
      }
      throw broken;
    }
  }
}

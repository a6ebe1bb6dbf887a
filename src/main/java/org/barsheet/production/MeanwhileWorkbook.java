package org.barsheet.production;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.barsheet.film.FilmSheet;
import org.barsheet.workbook.FinishedWorkbook;
import org.barsheet.workbook.WorkbookWriter;
import org.barsheet.workbook.typed.CarriedOver;
import org.barsheet.workbook.typed.TypedCells;

/** A workbook that is made while the other files are written: it takes as long as all of them. */
final class MeanwhileWorkbook implements AutoCloseable {

  private final CompletableFuture<FinishedWorkbook> workbook;

  private MeanwhileWorkbook(CompletableFuture<FinishedWorkbook> workbook) {
    this.workbook = workbook;
  }

  /**
   * Begins to make the workbook of a film.
   *
   * @param before the workbook it takes the place of, where there is one: what people typed into it
   *     is carried over
   */
  static MeanwhileWorkbook of(FilmSheet film, Path before) {
    return new MeanwhileWorkbook(
        CompletableFuture.supplyAsync(() -> WorkbookWriter.make(film, TypedCells.read(before))));
  }

  /**
   * Begins to load the spreadsheet library, so that it is there when the film is. Nothing depends
   * on it: what goes wrong here goes wrong again, and is reported, when the workbook is made.
   *
   * @return done when the library is loaded or could not be; to be waited for before the program
   *     ends, as it writes files meanwhile and removes them
   */
  static CompletableFuture<Void> loadLibrary() {
    return CompletableFuture.runAsync(WorkbookWriter::loadLibrary)
        .exceptionally(reportedLater -> null);
  }

  /** Waits for the workbook and writes it out. */
  void writeTo(OutputStream out) throws IOException {
    finished().writeTo(out);
  }

  /** What of the workbook before stands in this one. Waits for it. */
  CarriedOver carried() {
    return finished().carried();
  }

  private FinishedWorkbook finished() {
    try {
      return workbook.join();
    } catch (CompletionException broken) {
      if (broken.getCause() instanceof UncheckedIOException disk) {
        throw disk;
      }
      throw broken;
    }
  }

  /** Waits until no file is written any more; what went wrong was told, or no longer matters. */
  @Override
  public void close() {
    workbook.handle((done, broken) -> true).join();
  }
}

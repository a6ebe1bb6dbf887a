package org.barsheet.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.apache.poi.util.TempFile;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.input.SafeFile;

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
   * @throws InputException if the target cannot be written
   */
  public static Optional<Path> write(FilmSheet film, Path target) {
    byte[] workbook = bytesFor(film, target);
    Optional<Path> kept = keep(target);
    try {
      SafeFile.write(target, workbook);
      return kept;
    } catch (InputException unwritten) {
      kept.ifPresent(WorkbookWriter::deleteCopy);
      throw unwritten;
    }
  }

  private static byte[] bytesFor(FilmSheet film, Path target) {
    try {
      return bytes(film);
    } catch (UncheckedIOException refused) {
      throw new InputException(
          Problem.ofFile(
              target.toString(),
              "this workbook cannot be written ("
                  + Objects.requireNonNull(refused.getCause()).getMessage()
                  + ")",
              "check that the disk has room and that "
                  + System.getProperty("java.io.tmpdir")
                  + " can be written"));
    }
  }

  private static Optional<Path> keep(Path target) {
    try {
      return WorkbookKeeper.keepIfChanged(target);
    } catch (IOException refused) {
      throw new InputException(
          Problem.ofFile(
              target.toString(),
              "the workbook that stands here cannot be kept (" + refused.getMessage() + ")",
              "close it in other programs, or choose another folder"));
    }
  }

  /** The old workbook still stands in its place, so its copy is not needed. */
  private static void deleteCopy(Path kept) {
    try {
      Files.deleteIfExists(kept);
    } catch (IOException stays) {
      throw new UncheckedIOException(stays);
    }
  }

  /**
   * The workbook as a file holds it.
   *
   * @throws UncheckedIOException if the disk does not take what is set aside meanwhile
   */
  static byte[] bytes(FilmSheet film) {
    try (WorkingFiles working = new WorkingFiles()) {
      return SealedWorkbook.seal(TempFile.withStrategy(working, () -> raw(film)));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static byte[] raw(FilmSheet film) {
    ByteArrayOutputStream raw = new ByteArrayOutputStream(1 << 18);
    try (Book book = new Book(film)) {
      FilmWorksheet.write(book);
      TimelineWorksheet.write(book);
      MusicWorksheet.write(book);
      ExposureWorksheet.write(book);
      CuesWorksheet.write(book);
      OpeningsWorksheet.write(book);
      BarsWorksheet.write(book);
      book.writeTo(raw);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (RuntimeException broken) {
      // The library hides a full disk in an exception of no kind of its own.
      if (broken.getCause() instanceof IOException disk) {
        throw new UncheckedIOException(disk);
      }
      throw broken;
    }
    return raw.toByteArray();
  }
}

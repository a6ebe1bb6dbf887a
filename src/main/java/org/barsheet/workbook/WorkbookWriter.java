package org.barsheet.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.util.TempFile;
import org.barsheet.film.FilmSheet;
import org.barsheet.workbook.exposure.ExposureSheets;
import org.barsheet.workbook.exposure.ExposureWorksheet;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.LibraryLoading;
import org.barsheet.workbook.typed.CarryingOver;
import org.barsheet.workbook.typed.RowOrigins;
import org.barsheet.workbook.typed.SealedWorkbook;
import org.barsheet.workbook.typed.TypedCells;
import org.barsheet.workbook.typed.WorkingFiles;

/** Writes the workbook of a film. */
public final class WorkbookWriter {

  static {
    // The library ends every XML declaration with what this says when its classes are loaded.
    // Nobody else is touched: Java itself has read it before the program began.
    System.setProperty("line.separator", "\n");
  }

  private WorkbookWriter() {}

  /**
   * Whether a workbook is as it was written. A program that saved it without a change counts as
   * having changed it, and so does damage.
   */
  public static boolean isUntouched(Path workbook) {
    return SealedWorkbook.isUntouched(workbook);
  }

  /**
   * The workbook as a file holds it, without anything typed by people.
   *
   * @throws UncheckedIOException if the disk does not take what is set aside meanwhile
   */
  public static byte[] bytes(FilmSheet film) {
    return make(film, TypedCells.NONE).bytes();
  }

  /**
   * Makes the workbook, with what people typed in its place again.
   *
   * @param typed what people typed into the workbook that this one takes the place of
   * @throws UncheckedIOException if the disk does not take what is set aside meanwhile
   */
  public static FinishedWorkbook make(FilmSheet film, TypedCells typed) {
    RowOrigins origins =
        film.changes()
            .<RowOrigins>map(changes -> new RowIdentity(changes.identities()))
            .orElse(RowOrigins.SAME);
    CarryingOver carrying = new CarryingOver(typed, origins);
    LocaleUtil.setUserLocale(Locale.ENGLISH); // the library writes it beside every text of a shape
    try (WorkingFiles working = new WorkingFiles()) {
      byte[] raw = TempFile.withStrategy(working, () -> raw(film, carrying));
      return new FinishedWorkbook(SealedWorkbook.seal(raw), carrying.done());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } finally {
      LocaleUtil.resetUserLocale();
    }
  }

  /**
   * Loads the spreadsheet library by writing a small workbook to nowhere. Half of the time of a
   * first workbook goes into this, and it needs no film. What a killed program set aside goes.
   *
   * @throws UncheckedIOException if the disk does not take what is set aside meanwhile
   */
  public static void loadLibrary() {
    WorkingFiles.clearDead(Path.of(System.getProperty("java.io.tmpdir", "")));
    try (WorkingFiles working = new WorkingFiles()) {
      TempFile.withStrategy(working, LibraryLoading::writeSmallWorkbook);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static byte[] raw(FilmSheet film, CarryingOver carrying) {
    ByteArrayOutputStream raw = new ByteArrayOutputStream(1 << 18);
    try (Book book = new Book(film, carrying)) {
      ExposureSheets exposures = ExposureSheets.of(film, book.index());
      CallWorksheets calls = new CallWorksheets(film);
      FilmWorksheet.write(book, exposures);
      TimelineWorksheet.write(book, exposures);
      MusicWorksheet.write(book);
      ExposureWorksheet.write(book, exposures);
      CuesWorksheet.write(book, exposures);
      OpeningsWorksheet.write(book);
      ArtworkWorksheet.write(book);
      ShootingWorksheet.write(book);
      DaysWorksheet.write(book);
      PhotographsWorksheet.write(book);
      PerformersWorksheet.write(book, calls);
      calls.write(book);
      BarsWorksheet.write(book);
      ChangesWorksheet.write(book);
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

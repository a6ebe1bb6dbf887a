package org.barsheet.workbook.exposure;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Columns;
import org.barsheet.workbook.pen.FilmIndex;
import org.barsheet.workbook.pen.PageSize;
import org.barsheet.workbook.pen.SheetFrame;

/** Every row of the exposure sheet in its place: on which sheet, on which page, in which row. */
public final class ExposureSheets {

  private static final String NAME = "Exposure";

  /**
   * What one sheet can hold.
   *
   * @param pages how many pages: one more than the breaks between them
   * @param rows how many rows
   */
  public record Limits(int pages, int rows) {

    /** 1,026 breaks and 1,048,576 rows (support.microsoft.com, specifications and limits). */
    static final Limits OF_A_SHEET = new Limits(1_026, 1_048_576 - SheetFrame.FIRST_ROW);
  }

  /**
   * One sheet.
   *
   * @param name its name
   * @param pages its rows by page
   */
  public record Part(String name, List<List<ExposureRow>> pages) {

    int rows() {
      return pages.stream().mapToInt(List::size).sum();
    }
  }

  private final List<Part> parts = new ArrayList<>();
  private final int[] rowOfFrame;
  private final int[] partOfFrame;
  private final ExposureColumns columns;
  private final PageSize page;

  /** The whole exposure sheet of a film. */
  public static ExposureSheets of(FilmSheet film, FilmIndex index) {
    ExposureColumns columns = new ExposureColumns(index, film.movements());
    PageSize page = columns.page(film.plan().film().paper());
    return new ExposureSheets(
        film, columns, page, pages(film, index, columns, page), Limits.OF_A_SHEET);
  }

  public ExposureSheets(
      FilmSheet film,
      ExposureColumns columns,
      PageSize page,
      List<List<ExposureRow>> pages,
      Limits limits) {
    this.columns = columns;
    this.page = page;
    int frames = Math.toIntExact(film.timing().lengthFrames());
    rowOfFrame = new int[frames];
    partOfFrame = new int[frames];
    share(pages, limits);
    for (int part = 0; part < parts.size(); part++) {
      place(part);
    }
  }

  /** The pages of the whole film. */
  public static List<List<ExposureRow>> pages(
      FilmSheet film, FilmIndex index, ExposureColumns columns, PageSize page) {
    Film settings = film.plan().film();
    Columns widths = new Columns(columns.list(), page.width());
    FrameNotes notes = new FrameNotes(film);
    ExposureLayout layout = new ExposureLayout(film, index, notes, columns, widths);
    double room = page.height() - ExposureLayout.HEADING_POINTS;
    return ExposurePages.of(settings, index, layout, notes, room);
  }

  private void share(List<List<ExposureRow>> pages, Limits limits) {
    List<List<ExposureRow>> open = new ArrayList<>();
    int rows = 0;
    for (List<ExposureRow> page : pages) {
      if (open.size() == limits.pages() || rows + page.size() > limits.rows()) {
        close(open);
        open = new ArrayList<>();
        rows = 0;
      }
      open.add(page);
      rows += page.size();
    }
    close(open);
  }

  private void close(List<List<ExposureRow>> pages) {
    String name = parts.isEmpty() ? NAME : NAME + " " + (parts.size() + 1);
    parts.add(new Part(name, List.copyOf(pages)));
  }

  private void place(int part) {
    int row = SheetFrame.FIRST_ROW;
    for (List<ExposureRow> page : parts.get(part).pages()) {
      for (ExposureRow one : page) {
        if (one.isFrame()) {
          rowOfFrame[(int) one.frame()] = row;
          partOfFrame[(int) one.frame()] = part;
        }
        row++;
      }
    }
  }

  ExposureColumns columns() {
    return columns;
  }

  PageSize page() {
    return page;
  }

  public List<Part> parts() {
    return parts;
  }

  /** Where a film frame stands. */
  public Address addressOf(long frame) {
    int at = Math.toIntExact(Math.max(0, Math.min(frame, rowOfFrame.length - 1L)));
    return new Address(
        parts.get(partOfFrame[at]).name(), rowOfFrame[at], ExposureColumns.FILM_FRAME);
  }
}

package org.barsheet.workbook.exposure;

import java.util.List;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureRow.Kind;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.Signs;

/** What is under the camera on every frame, one row a frame. */
public final class ExposureWorksheet {

  private final Book book;
  private final Film film;
  private final ExposureColumns columns;
  private final SheetFrame frame;
  private final SheetPen pen;
  private final FrameRow frameRow;
  private final ShotDetails details;
  private final ExposureSheets.Part part;

  private ExposureWorksheet(
      Book book, ExposureSheets exposures, ExposureSheets.Part part, FrameNotes notes) {
    this.book = book;
    this.part = part;
    this.film = book.film().plan().film();
    this.columns = exposures.columns();
    this.frame = book.frame(part.name(), exposures.page(), columns.list(), fact(book));
    this.pen = frame.pen();
    this.details = new ShotDetails(book.film());
    this.frameRow = new FrameRow(film, columns, notes, details, pen);
  }

  private static String fact(Book book) {
    long frames = book.film().timing().lengthFrames();
    return SheetWords.count(frames, "frame")
        + ", "
        + SheetWords.duration(book.film().plan().film(), frames);
  }

  /** Writes the exposure sheet, as several sheets where one cannot hold it. */
  public static void write(Book book, ExposureSheets exposures) {
    FrameNotes notes = new FrameNotes(book.film());
    for (ExposureSheets.Part part : exposures.parts()) {
      new ExposureWorksheet(book, exposures, part, notes).write();
    }
  }

  private void write() {
    frame.sheet().setRowSumsBelow(false);
    frame.heading(ExposureLayout.HEADING_ROW_POINTS);
    int row = SheetFrame.FIRST_ROW;
    for (List<ExposureRow> page : part.pages()) {
      if (row > SheetFrame.FIRST_ROW) {
        frame.sheet().setRowBreak(row - 1);
      }
      row = writePage(page, row);
    }
    nameRanges(row - 1);
    frame.finish(
        "shot frames count from 1, film frames from 0; a held photograph is written once"
            + book.index().motifLegend());
  }

  private int writePage(List<ExposureRow> page, int firstRow) {
    int row = firstRow;
    int notesFrom = firstRow;
    Kind above = Kind.SHOT;
    List<LayerTrack> tracks = List.of();
    for (ExposureRow one : page) {
      Shot shot = book.index().shot(one.shot());
      if (one.kind() == Kind.SHOT) {
        tracks = LayerTrack.of(book.index(), shot);
      }
      boolean own = one.kind() != above || frameRow.begins(shot, one.frame(), tracks);
      if (one.kind() != Kind.FRAME || own) {
        pen.joinDown(columns.notes(), notesFrom, row - 1);
        notesFrom = row;
      }
      pen.row(row, one.kind() == Kind.FOLDED ? ExposureLayout.FRAME_POINTS : one.height());
      writeRow(one, shot, tracks, own);
      above = one.kind();
      row++;
    }
    pen.joinDown(columns.notes(), notesFrom, row - 1);
    return row;
  }

  private void writeRow(ExposureRow row, Shot shot, List<LayerTrack> tracks, boolean ownNotes) {
    switch (row.kind()) {
      case SHOT -> new ShotHeading(details, columns, shot, tracks, row.frame()).writeName(pen);
      case SHOT_DETAILS ->
          new ShotHeading(details, columns, shot, tracks, row.frame()).writeDetails(pen);
      case SHOT_THROUGHOUT ->
          new ShotHeading(details, columns, shot, tracks, row.frame()).writeThroughout(pen);
      case SUMMARY -> summary(shot, row, tracks);
      case FRAME -> frameRow.write(shot, row.frame(), tracks, ownNotes);
      case FOLDED -> {
        frameRow.write(shot, row.frame(), tracks, false);
        frame.sheet().setRowOutlineLevel(pen.rowIndex(), 1);
        pen.row().setZeroHeight(true);
      }
    }
  }

  private void summary(Shot shot, ExposureRow row, List<LayerTrack> tracks) {
    long last = row.frame() + row.frames() - 1;
    Look look = ExposureLooks.SUMMARY;
    pen.blanks(ExposureColumns.SHOT_FRAME, columns.panel(), look);
    pen.label(columns.panel(), shot.panel().name(), Look.PENCIL.size(8));
    pen.text(
        ExposureColumns.SHOT_FRAME,
        "held " + row.frames() + " f more, to " + film.timecode(last),
        look);
    for (int layer = 0; layer < tracks.size(); layer++) {
      if (!tracks.get(layer).isEmpty()) {
        pen.text(columns.photograph(layer), Signs.HOLD, ExposureLooks.SUMMARY_HOLD);
      }
    }
    pen.rowName(
        columns.rowName(),
        FrameRow.rowName(shot, row.frame() - shot.frames().start() + 1) + " held");
    pen.row().setCollapsed(true);
  }

  private void nameRanges(int lastRow) {
    String prefix = part.name().replace(" ", "") + "_";
    nameColumn(prefix + "frames", ExposureColumns.FILM_FRAME, lastRow);
    nameColumn(prefix + "done", columns.tick(), lastRow);
    nameColumn(prefix + "notes", columns.notes(), lastRow);
    nameColumn(prefix + "row_names", columns.rowName(), lastRow);
  }

  private void nameColumn(String name, int column, int lastRow) {
    book.name(name, new Address(part.name(), SheetFrame.FIRST_ROW, column), lastRow, column);
  }
}

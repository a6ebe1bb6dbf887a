package org.barsheet.workbook;

import java.util.List;
import org.barsheet.clock.Timecode;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.SheetNote;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.ExposureLooks.Ground;

/** What is under the camera on every frame, one row a frame. */
final class ExposureWorksheet {

  private static final double HEADING_ROW_POINTS = 25;

  /** Height of all that is repeated on each page. */
  static final double HEADING_POINTS = SheetFrame.TITLE_POINTS + HEADING_ROW_POINTS;

  private final Book book;
  private final Film film;
  private final FrameNotes notes;
  private final ExposureColumns columns;
  private final SheetFrame frame;
  private final SheetPen pen;
  private final ExposureSheets.Part part;
  private final ShotHeading heading;

  private ExposureWorksheet(Book book, ExposureSheets.Part part, FrameNotes notes) {
    this.book = book;
    this.part = part;
    this.film = book.film().timing().plan().film();
    this.notes = notes;
    this.columns = book.exposureColumns();
    this.frame =
        book.frame(
            part.name(),
            book.exposurePage(),
            columns.list(),
            Words.count(book.film().timing().lengthFrames(), "frame")
                + ", "
                + Words.duration(film, book.film().timing().lengthFrames()));
    this.pen = frame.pen();
    this.heading = new ShotHeading(book, frame);
  }

  /** Writes the exposure sheet, as several sheets where one cannot hold it. */
  static void write(Book book) {
    FrameNotes notes = new FrameNotes(book.film().notes());
    for (ExposureSheets.Part part : book.exposures().parts()) {
      new ExposureWorksheet(book, part, notes).write();
    }
  }

  private void write() {
    frame.sheet().setRowSumsBelow(false);
    frame.heading(HEADING_ROW_POINTS);
    int row = SheetFrame.FIRST_ROW;
    for (List<ExposureRow> page : part.pages()) {
      if (row > SheetFrame.FIRST_ROW) {
        frame.sheet().setRowBreak(row - 1);
      }
      row = writePage(page, row);
    }
    nameRanges(row - 1);
    frame.finish("shot frames count from 1, film frames from 0; a held picture is written once");
  }

  private int writePage(List<ExposureRow> page, int firstRow) {
    Shot shot = book.index().shot(page.get(0).shot());
    List<LayerTrack> tracks = LayerTrack.of(book.index(), shot);
    int row = firstRow;
    for (ExposureRow one : page) {
      pen.row(
          row, one.kind() == ExposureRow.Kind.FOLDED ? ExposureLayout.FRAME_POINTS : one.height());
      switch (one.kind()) {
        case SHOT -> heading.name(shot, tracks, one.frame() > shot.frames().start());
        case SHOT_DETAILS -> heading.details(shot, tracks);
        case SUMMARY -> summary(shot, one, tracks);
        case FRAME -> frame(shot, one.frame(), tracks, row == firstRow + 2);
        case FOLDED -> {
          frame(shot, one.frame(), tracks, row == firstRow + 2);
          fold(row);
        }
      }
      row++;
    }
    return row;
  }

  private void fold(int row) {
    frame.sheet().setRowOutlineLevel(row, 1);
    pen.row().setZeroHeight(true);
  }

  private void frame(Shot shot, long number, List<LayerTrack> tracks, boolean firstOnPage) {
    Timecode timecode = film.timecode(number);
    boolean lands =
        book.index().revealsOf(shot).stream().anyMatch(reveal -> reveal.landsFrame() == number);
    Ground ground = Ground.of(timecode, lands, number == shot.frames().start());
    Look letters = ground.look(ExposureLooks.LETTERS);
    Look quiet = ground.look(ExposureLooks.LETTERS.in(Ink.PENCIL));
    boolean second = timecode.frames() == 0 || firstOnPage;
    pen.label(ExposureColumns.PANEL, shot.panel().name(), quiet.left());
    pen.number(ExposureColumns.SHOT_FRAME, number - shot.frames().start() + 1, letters.right());
    pen.number(ExposureColumns.FILM_FRAME, number, quiet.right());
    pen.text(ExposureColumns.TIMECODE, timecode.toString(), (second ? letters : quiet).right());
    words(number, ground);
    for (int layer = 0; layer < tracks.size(); layer++) {
      picture(layer, tracks.get(layer), number, firstOnPage, ground);
    }
    pen.blank(columns.tick(), ExposureLooks.toFillIn(ground));
    pen.blank(columns.notes(), ExposureLooks.toFillIn(ground));
    pen.text(
        columns.rowName(),
        "panel " + shot.panel().name() + " frame " + (number - shot.frames().start() + 1),
        Look.PENCIL);
  }

  private void words(long number, Ground ground) {
    Look letters = ground.look(ExposureLooks.LETTERS).wrapped();
    FrameNotes.Words beat = notes.at(number, SheetNote.Column.BEAT);
    FrameNotes.Words sound = notes.at(number, SheetNote.Column.SOUND);
    FrameNotes.Words action = notes.at(number, SheetNote.Column.ACTION);
    boolean bar = beat.text().startsWith("bar");
    pen.text(
        ExposureColumns.BEAT,
        beat.text(),
        bar ? ground.look(ExposureLooks.LETTERS.inBold()) : ground.look(ExposureLooks.LETTERS));
    pen.text(ExposureColumns.MOTIF, sound.motif(), ground.look(ExposureLooks.LETTERS.inBold()));
    pen.text(ExposureColumns.SOUND, withAccent(sound), sound.accent() ? letters.inBold() : letters);
    pen.text(
        ExposureColumns.ACTION, withAccent(action), action.accent() ? letters.inBold() : letters);
  }

  private static String withAccent(FrameNotes.Words words) {
    return words.accent() ? Signs.ACCENT + " " + words.text() : words.text();
  }

  private void picture(
      int layer, LayerTrack track, long number, boolean firstOnPage, Ground ground) {
    int column = columns.picture(layer);
    Look letters = ground.look(ExposureLooks.LETTERS);
    if (track.isEmpty()) {
      pen.blank(column, letters).blank(column + 1, letters);
      return;
    }
    Exposure exposure = track.at(number);
    if (exposure.frames().start() == number || firstOnPage) {
      pen.text(column, exposure.picture().name(), letters);
      percent(column + 1, exposure, letters.right());
    } else {
      pen.text(column, Signs.HOLD, ExposureLooks.hold(ground));
      pen.blank(column + 1, letters);
    }
  }

  private void percent(int column, Exposure exposure, Look look) {
    if (exposure.picture().number() == 0) {
      pen.text(column, "closed", look);
    } else {
      pen.number(column, 100 * exposure.progress(), look.format("0"));
    }
  }

  private void summary(Shot shot, ExposureRow row, List<LayerTrack> tracks) {
    long last = row.frame() + row.frames() - 1;
    Look look = ExposureLooks.SUMMARY;
    pen.label(ExposureColumns.PANEL, shot.panel().name(), look.left());
    pen.blanks(ExposureColumns.SHOT_FRAME, columns.rowName(), look);
    pen.text(
        ExposureColumns.SHOT_FRAME,
        "held " + row.frames() + " f more, to " + film.timecode(last),
        look);
    for (int layer = 0; layer < tracks.size(); layer++) {
      if (!tracks.get(layer).isEmpty()) {
        pen.text(columns.picture(layer), Signs.HOLD, ExposureLooks.SUMMARY_HOLD);
      }
    }
    pen.row().setCollapsed(true);
  }

  private void nameRanges(int lastRow) {
    String suffix = part.name().replace("Exposure", "").strip();
    String prefix = "Exposure" + suffix + "_";
    nameColumn(prefix + "frames", ExposureColumns.FILM_FRAME, lastRow);
    nameColumn(prefix + "done", columns.tick(), lastRow);
    nameColumn(prefix + "notes", columns.notes(), lastRow);
    nameColumn(prefix + "row_names", columns.rowName(), lastRow);
  }

  private void nameColumn(String name, int column, int lastRow) {
    book.name(name, new Address(part.name(), SheetFrame.FIRST_ROW, column), lastRow, column);
  }
}

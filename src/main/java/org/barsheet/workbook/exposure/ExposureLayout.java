package org.barsheet.workbook.exposure;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.SheetNote;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureRow.Kind;
import org.barsheet.workbook.pen.Columns;
import org.barsheet.workbook.pen.FilmIndex;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.TextWidth;

/**
 * Lays the frames of the film on the rows of the exposure sheet. Every frame has its row; where
 * nothing moves for more than half a second, the frames after the first are folded away under a
 * summary.
 */
public final class ExposureLayout {

  static final double HEADING_ROW_POINTS = 25;

  /** Height of all that is repeated on each page. */
  public static final double HEADING_POINTS = SheetFrame.TITLE_POINTS + HEADING_ROW_POINTS;

  static final double FRAME_POINTS = 11.5;

  private final Film film;
  private final FilmIndex index;
  private final FrameNotes notes;
  private final ShotDetails details;
  private final ExposureColumns columns;
  private final Columns widths;

  ExposureLayout(
      FilmSheet sheet, FilmIndex index, FrameNotes notes, ExposureColumns columns, Columns widths) {
    this.film = sheet.plan().film();
    this.details = new ShotDetails(sheet);
    this.index = index;
    this.notes = notes;
    this.columns = columns;
    this.widths = widths;
  }

  /** The rows of heading over a page of a shot that begins with a film frame. */
  List<ExposureRow> headingOf(Shot shot, long frame) {
    ShotHeading heading =
        new ShotHeading(details, columns, shot, LayerTrack.of(index, shot), frame);
    List<ExposureRow> rows = new ArrayList<>();
    rows.add(new ExposureRow(Kind.SHOT, shot.index(), frame, 0, heading.nameHeight(widths)));
    rows.add(
        new ExposureRow(Kind.SHOT_DETAILS, shot.index(), frame, 0, heading.detailsHeight(widths)));
    if (frame == shot.frames().start()) {
      double height = heading.throughoutHeight(widths);
      rows.add(new ExposureRow(Kind.SHOT_THROUGHOUT, shot.index(), frame, 0, height));
    }
    return rows;
  }

  /** The rows of one shot, without its heading. */
  List<ExposureRow> rowsOf(Shot shot) {
    List<ExposureRow> rows = new ArrayList<>();
    boolean[] still = stillFrames(shot);
    int from = 0;
    while (from < still.length) {
      int end = endOfRun(still, from);
      boolean folds = still[from] && end - from > film.rate().nominal() / 2;
      addRun(rows, shot, from, end, folds);
      from = end;
    }
    return rows;
  }

  private void addRun(List<ExposureRow> rows, Shot shot, int from, int end, boolean folds) {
    long start = shot.frames().start();
    int index = shot.index();
    if (folds) {
      rows.add(new ExposureRow(Kind.SUMMARY, index, start + from, end - from, FRAME_POINTS));
    }
    for (long frame = start + from; frame < start + end; frame++) {
      rows.add(
          folds
              ? new ExposureRow(Kind.FOLDED, index, frame, 1, 0)
              : new ExposureRow(Kind.FRAME, index, frame, 1, height(frame)));
    }
  }

  /** Which frames of a shot show only what the frame before showed. */
  private boolean[] stillFrames(Shot shot) {
    long start = shot.frames().start();
    boolean[] still = new boolean[Math.toIntExact(shot.frames().length())];
    for (int frame = 1; frame < still.length; frame++) {
      still[frame] = !notes.mustShow(start + frame);
    }
    for (LayerTrack track : LayerTrack.of(index, shot)) {
      track
          .exposures()
          .forEach(exposure -> still[Math.toIntExact(exposure.frames().start() - start)] = false);
    }
    return still;
  }

  private static int endOfRun(boolean[] still, int from) {
    int end = from;
    while (end < still.length && still[end] == still[from]) {
      end++;
    }
    return end;
  }

  private double height(long frame) {
    int lines =
        Math.max(
            lines(ExposureColumns.SOUND, frame, SheetNote.Column.SOUND),
            lines(ExposureColumns.ACTION, frame, SheetNote.Column.ACTION));
    return lines <= 1 ? FRAME_POINTS : TextWidth.height(lines, ExposureLooks.LETTERS.points());
  }

  private int lines(int column, long frame, SheetNote.Column words) {
    String text = notes.text(frame, words);
    boolean bold = notes.lands(frame) || notes.isMarked(frame, words);
    Look look = bold ? ExposureLooks.LETTERS.inBold() : ExposureLooks.LETTERS;
    return text.isEmpty() ? 1 : widths.lines(column, text, look);
  }
}

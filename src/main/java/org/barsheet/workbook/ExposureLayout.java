package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.SheetNote;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.ExposureRow.Kind;

/**
 * Lays the frames of the film on the rows of the exposure sheet. Every frame has its row; where
 * nothing moves for more than half a second, the frames after the first are folded away under a
 * summary.
 */
final class ExposureLayout {

  static final double FRAME_POINTS = 11.5;
  static final double SHOT_POINTS = 17;
  static final double DETAILS_POINTS = 12.5;

  private final Film film;
  private final FilmIndex index;
  private final FrameNotes notes;
  private final Columns columns;

  ExposureLayout(Film film, FilmIndex index, FrameNotes notes, Columns columns) {
    this.film = film;
    this.index = index;
    this.notes = notes;
    this.columns = columns;
  }

  /** The rows of one shot, without its headings. */
  List<ExposureRow> rowsOf(Shot shot) {
    List<ExposureRow> rows = new ArrayList<>();
    boolean[] still = stillFrames(shot);
    long start = shot.frames().start();
    int frame = 0;
    while (frame < still.length) {
      int end = endOfRun(still, frame);
      if (still[frame] && end - frame > film.rate().nominal() / 2) {
        rows.add(
            new ExposureRow(Kind.SUMMARY, shot.index(), start + frame, end - frame, FRAME_POINTS));
        for (int folded = frame; folded < end; folded++) {
          rows.add(new ExposureRow(Kind.FOLDED, shot.index(), start + folded, 1, 0));
        }
      } else {
        for (int shown = frame; shown < end; shown++) {
          rows.add(
              new ExposureRow(Kind.FRAME, shot.index(), start + shown, 1, height(start + shown)));
        }
      }
      frame = end;
    }
    return rows;
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
            lines(ExposureColumns.SOUND, notes.at(frame, SheetNote.Column.SOUND)),
            lines(ExposureColumns.ACTION, notes.at(frame, SheetNote.Column.ACTION)));
    return lines <= 1 ? FRAME_POINTS : TextWidth.height(lines, ExposureLooks.LETTERS.points());
  }

  private int lines(int column, FrameNotes.Words words) {
    if (words.text().isEmpty()) {
      return 1;
    }
    String text = words.accent() ? Signs.ACCENT + " " + words.text() : words.text();
    return columns.lines(column, text, ExposureLooks.LETTERS.inBold());
  }
}

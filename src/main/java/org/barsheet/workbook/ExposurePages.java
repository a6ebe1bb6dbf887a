package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.ExposureRow.Kind;

/**
 * Breaks the exposure sheet into pages: a shot starts a page, and a long shot goes on, under its
 * name again, on further pages that begin with a whole second where that fills the paper well, else
 * with a half or a quarter of one.
 */
final class ExposurePages {

  /** A page is filled well from this share of its room on. */
  private static final double WELL_FILLED = 0.7;

  private static final double HEADINGS = ExposureLayout.SHOT_POINTS + ExposureLayout.DETAILS_POINTS;

  private final Film film;
  private final double room;
  private final int step;

  /**
   * Pages of a film.
   *
   * @param height of a page in points, below the repeated title
   */
  ExposurePages(Film film, double height) {
    this.film = film;
    this.room = height - HEADINGS;
    this.step = step(film.rate().nominal(), (int) (room / ExposureLayout.FRAME_POINTS));
  }

  private static int step(int second, int rows) {
    for (int step = second; step > 1 && second % step == 0; step /= 2) {
      if (rows / step * step >= WELL_FILLED * rows) {
        return step;
      }
    }
    return 1;
  }

  /** The pages of one shot, each with its headings. */
  List<List<ExposureRow>> pagesOf(Shot shot, List<ExposureRow> rows) {
    List<List<ExposureRow>> pages = new ArrayList<>();
    int from = 0;
    while (from < rows.size()) {
      int end = endOfPage(rows, from);
      List<ExposureRow> page = new ArrayList<>(end - from + 2);
      long frame = rows.get(from).frame();
      page.add(new ExposureRow(Kind.SHOT, shot.index(), frame, 0, ExposureLayout.SHOT_POINTS));
      page.add(
          new ExposureRow(
              Kind.SHOT_DETAILS, shot.index(), frame, 0, ExposureLayout.DETAILS_POINTS));
      page.addAll(rows.subList(from, end));
      pages.add(page);
      from = end;
    }
    return pages;
  }

  private int endOfPage(List<ExposureRow> rows, int from) {
    double used = 0;
    int candidate = from;
    for (int row = from; row < rows.size(); row++) {
      if (row > from && mayBegin(rows.get(row))) {
        candidate = row;
      }
      used += rows.get(row).height();
      if (used > room) {
        return candidate > from ? candidate : Math.max(row, from + 1);
      }
    }
    return rows.size();
  }

  private boolean mayBegin(ExposureRow row) {
    boolean onStep = row.kind() == Kind.FRAME && film.timecode(row.frame()).frames() % step == 0;
    return onStep || row.kind() == Kind.SUMMARY;
  }
}

package org.barsheet.workbook.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureRow.Kind;
import org.barsheet.workbook.pen.FilmIndex;

/**
 * Breaks the exposure sheet into pages. A shot follows the one before where there is room for all
 * of it, else it starts a page. A long shot goes on, under its name again, on further pages, which
 * begin with a whole second where that fills the paper well, else with a half or a quarter of one.
 */
final class ExposurePages {

  /** A page is filled well from this share of its room on. */
  private static final double WELL_FILLED = 0.75;

  /** Parts of a second that a page may begin with, the best first. */
  private static final int[] STEPS = {1, 2, 4};

  private final Film film;
  private final ExposureLayout layout;
  private final double room;
  private final List<List<ExposureRow>> pages = new ArrayList<>();
  private List<ExposureRow> page = new ArrayList<>();
  private double used;

  private ExposurePages(Film film, ExposureLayout layout, double room) {
    this.film = film;
    this.layout = layout;
    this.room = room;
  }

  /**
   * The pages of the whole film, each a list of rows.
   *
   * @param room height of a page in points, below the repeated title
   */
  static List<List<ExposureRow>> of(
      Film film, FilmIndex index, ExposureLayout layout, double room) {
    ExposurePages pages = new ExposurePages(film, layout, room);
    index.shots().forEach(pages::add);
    pages.close();
    return pages.pages;
  }

  private void add(Shot shot) {
    List<ExposureRow> rows = layout.rowsOf(shot);
    if (used + height(shot, rows) > room) {
      close();
    }
    int from = 0;
    while (from < rows.size()) {
      addAll(layout.headingOf(shot, rows.get(from).frame()));
      int end = endOfPage(rows, from);
      addAll(rows.subList(from, end));
      if (end < rows.size()) {
        close();
      }
      from = end;
    }
  }

  private double height(Shot shot, List<ExposureRow> rows) {
    return height(layout.headingOf(shot, shot.frames().start())) + height(rows);
  }

  private static double height(List<ExposureRow> rows) {
    return rows.stream().mapToDouble(ExposureRow::height).sum();
  }

  private void addAll(List<ExposureRow> rows) {
    page.addAll(rows);
    used += height(rows);
  }

  private void close() {
    if (!page.isEmpty()) {
      pages.add(page);
      page = new ArrayList<>();
      used = 0;
    }
  }

  private int endOfPage(List<ExposureRow> rows, int from) {
    double filled = used;
    int[] lastBreaks = new int[STEPS.length];
    for (int row = from; row < rows.size(); row++) {
      for (int step = 0; step < STEPS.length; step++) {
        if (mayBegin(rows.get(row), STEPS[step]) && filled >= WELL_FILLED * room) {
          lastBreaks[step] = row;
        }
      }
      filled += rows.get(row).height();
      if (filled > room && row > from) {
        return IntStream.of(lastBreaks).filter(found -> found > from).findFirst().orElse(row);
      }
    }
    return rows.size();
  }

  /** Whether a page may begin with a row: on a part of a second, or with a hold. */
  private boolean mayBegin(ExposureRow row, int partsOfSecond) {
    int frames = film.timecode(row.frame()).frames();
    boolean begins = frames * partsOfSecond % film.rate().nominal() < partsOfSecond;
    return row.kind() == Kind.SUMMARY || (row.kind() == Kind.FRAME && begins);
  }
}

package org.barsheet.workbook.exposure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureRow.Kind;
import org.barsheet.workbook.pen.FilmIndex;

/**
 * Breaks the exposure sheet into as few pages as hold it, with a few rows of a shot on each of its
 * pages and a few before a landing. Among those the breaks are chosen that please best over the
 * whole film: before a shot, else at a whole second or before a hold, else at a half or a quarter
 * of a second. A shot that goes on has its name over it again.
 *
 * <p>The least cost over all pages together is found as lines of a paragraph are (D. E. Knuth and
 * M. F. Plass, "Breaking Paragraphs into Lines", Software: Practice and Experience 11, 1981).
 */
final class ExposurePages {

  /** Rows of a shot that a page should have at least, at its head and at its foot. */
  private static final int FEW_ROWS = 4;

  private static final double PAGE_COST = 100;

  /** Worse than another page. */
  private static final double FEW_ROWS_COST = 150;

  /** Of a page left empty; a half-empty one costs a quarter of it. */
  private static final double EMPTY_COST = 20;

  /** Parts of a second that a page may begin with, each dearer than the one before. */
  private static final int[] STEPS = {1, 2, 4};

  private static final double STEP_COST = 3;

  /** A place where nothing but the end of the paper asks for a break. */
  private static final double ANY_ROW_COST = 50;

  private final Film film;
  private final FilmIndex index;
  private final ExposureLayout layout;
  private final FrameNotes notes;
  private final double room;
  private final List<ExposureRow> rows = new ArrayList<>();

  /** The least cost of all pages before a row, and where the last of them begins. */
  private final double[] costs;

  private final int[] pageStarts;

  private ExposurePages(
      Film film, FilmIndex index, ExposureLayout layout, FrameNotes notes, double room) {
    this.film = film;
    this.index = index;
    this.layout = layout;
    this.notes = notes;
    this.room = room;
    for (Shot shot : index.shots()) {
      rows.addAll(layout.headingOf(shot, shot.frames().start()));
      rows.addAll(layout.rowsOf(shot));
    }
    costs = new double[rows.size() + 1];
    pageStarts = new int[rows.size() + 1];
    Arrays.fill(costs, Double.POSITIVE_INFINITY);
    costs[0] = 0;
  }

  /**
   * The pages of the whole film, each a list of rows.
   *
   * @param room height of a page in points, below the repeated title
   */
  static List<List<ExposureRow>> of(
      Film film, FilmIndex index, ExposureLayout layout, FrameNotes notes, double room) {
    ExposurePages pages = new ExposurePages(film, index, layout, notes, room);
    for (int row = 0; row < pages.rows.size(); row++) {
      if (pages.costs[row] < Double.POSITIVE_INFINITY) {
        pages.tryPagesFrom(row);
      }
    }
    return pages.best();
  }

  private void tryPagesFrom(int first) {
    double used = height(repeated(first)) + rows.get(first).height();
    boolean broken = false;
    int end = first + 1;
    while (end < rows.size() && used + rows.get(end).height() <= room) {
      double cost = breakCost(end);
      if (cost < ANY_ROW_COST) {
        broken = true;
        keep(first, end, cost, used);
      }
      used += rows.get(end).height();
      end++;
    }
    if (end == rows.size()) {
      keep(first, end, 0, room);
    } else if (!broken) {
      keep(first, end, ANY_ROW_COST, used);
    }
  }

  private void keep(int first, int end, double breakCost, double used) {
    double empty = (room - used) / room;
    double cost =
        costs[first]
            + PAGE_COST
            + breakCost
            + EMPTY_COST * empty * empty
            + (leavesFew(first, end) ? FEW_ROWS_COST : 0);
    if (cost < costs[end]) {
      costs[end] = cost;
      pageStarts[end] = first;
    }
  }

  /** How little a page may begin with a row: 0 before a shot. */
  private double breakCost(int row) {
    ExposureRow next = rows.get(row);
    if (next.kind() == Kind.SHOT) {
      return 0;
    }
    if (next.kind() == Kind.SUMMARY) {
      return STEP_COST;
    }
    if (next.kind() == Kind.FRAME) {
      int frames = film.timecode(next.frame()).frames();
      for (int step = 0; step < STEPS.length; step++) {
        if (frames * STEPS[step] % film.rate().nominal() < STEPS[step]) {
          return STEP_COST * (step + 1);
        }
      }
    }
    return next.kind() == Kind.FRAME ? ANY_ROW_COST : Double.POSITIVE_INFINITY;
  }

  /**
   * Whether a shot has few rows at an end of the page, or its landing stands there almost alone.
   */
  private boolean leavesFew(int first, int end) {
    boolean cutsLast = end < rows.size() && rows.get(end).kind() != Kind.SHOT;
    return (cutsLast && shotRowsBefore(first, end) < FEW_ROWS)
        || (goesOn(first) && (landsSoon(first, end) || shotRowsAfter(first) < FEW_ROWS));
  }

  private int shotRowsBefore(int first, int end) {
    int count = 0;
    for (int row = end - 1; row >= first && rows.get(row).isInShot(); row--) {
      count += rows.get(row).height() > 0 ? 1 : 0;
    }
    return count;
  }

  private int shotRowsAfter(int first) {
    int count = 0;
    for (int row = first;
        row < rows.size() && rows.get(row).isInShot() && count < FEW_ROWS;
        row++) {
      count += rows.get(row).height() > 0 ? 1 : 0;
    }
    return count;
  }

  private boolean landsSoon(int first, int end) {
    int last = Math.min(end, first + FEW_ROWS);
    return rows.subList(first, last).stream()
        .anyMatch(row -> row.kind() == Kind.FRAME && notes.lands(row.frame()));
  }

  private boolean goesOn(int row) {
    return rows.get(row).kind() != Kind.SHOT;
  }

  /** The heading of a shot over the rows with which it goes on. */
  private List<ExposureRow> repeated(int first) {
    ExposureRow row = rows.get(first);
    return goesOn(first) ? layout.headingOf(index.shot(row.shot()), row.frame()) : List.of();
  }

  private static double height(List<ExposureRow> rows) {
    return rows.stream().mapToDouble(ExposureRow::height).sum();
  }

  private List<List<ExposureRow>> best() {
    Deque<List<ExposureRow>> pages = new ArrayDeque<>();
    for (int end = rows.size(); end > 0; end = pageStarts[end]) {
      List<ExposureRow> page = new ArrayList<>(repeated(pageStarts[end]));
      page.addAll(rows.subList(pageStarts[end], end));
      pages.addFirst(page);
    }
    return List.copyOf(pages);
  }
}

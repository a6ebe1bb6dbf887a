package org.barsheet.paper;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.paper.Ink.Align;
import org.barsheet.paper.Ink.Words;
import org.barsheet.plan.Rect;

/**
 * A drawing larger than a page, on pages that overlap. Crosses in the overlaps lie on one another
 * when the pages are joined.
 */
final class Tiles {

  static final double OVERLAP = 10;

  private static final int MOST = 200;
  private static final int LETTERS = 26;
  private static final double CROSS = 3;
  private static final double ROOM = 5;

  /** Room for rounding. */
  private static final double DUST = 1e-9;

  private final Rect whole;
  private final double width;
  private final double height;

  /**
   * The tiles of a drawing.
   *
   * @param whole its bounds
   * @param bodyWidth of a page
   * @param bodyHeight of a page
   */
  Tiles(Rect whole, double bodyWidth, double bodyHeight) {
    this.whole = whole;
    this.width = bodyWidth - 2 * ROOM;
    this.height = bodyHeight - 2 * ROOM;
  }

  int columns() {
    return count(whole.width(), width);
  }

  int rows() {
    return count(whole.height(), height);
  }

  private static int count(double length, double page) {
    return (int) Math.max(1, Math.ceil((length - OVERLAP) / (page - OVERLAP) - DUST));
  }

  /** Whether so many pages are no help: nobody joins them. */
  boolean isTooMany() {
    return (long) columns() * rows() > MOST;
  }

  /** {@code B3}: rows are letters, columns numbers; past Z come numbers: {@code 27-3}. */
  static String name(int row, int column) {
    String number = Integer.toString(column + 1);
    return row < LETTERS ? (char) ('A' + row) + number : (row + 1) + "-" + number;
  }

  private Window window(int row, int column) {
    return new Window(
        whole.left() + column * (width - OVERLAP),
        whole.top() + row * (height - OVERLAP),
        width,
        height);
  }

  /** What one of the pages shows, with its crosses and the names of the pages beside it. */
  List<Ink> tile(int row, int column, List<Ink> drawing, double left, double top) {
    Window window = window(row, column);
    List<Ink> all = new ArrayList<>(drawing);
    all.addAll(crosses());
    List<Ink> tile = new ArrayList<>();
    double right = left + ROOM - window.left();
    double down = top + ROOM - window.top();
    for (Ink ink : all) {
      window.part(ink).ifPresent(part -> tile.add(part.moved(right, down)));
    }
    tile.addAll(neighbors(row, column, left, top));
    return tile;
  }

  /** In the middle of every overlap, near the ends of each page's edge. */
  private List<Ink> crosses() {
    List<Ink> crosses = new ArrayList<>();
    for (int row = 0; row < rows(); row++) {
      for (int column = 0; column < columns(); column++) {
        Window window = window(row, column);
        double endX = Math.min(window.left() + width, whole.left() + whole.width());
        double endY = Math.min(window.top() + height, whole.top() + whole.height());
        if (column + 1 < columns()) {
          double x = window.left() + width - OVERLAP / 2;
          cross(crosses, x, window.top() + 3 * CROSS + OVERLAP);
          cross(crosses, x, endY - 3 * CROSS - OVERLAP);
        }
        if (row + 1 < rows()) {
          double y = window.top() + height - OVERLAP / 2;
          cross(crosses, window.left() + 3 * CROSS + OVERLAP, y);
          cross(crosses, endX - 3 * CROSS - OVERLAP, y);
        }
      }
    }
    return crosses;
  }

  private static void cross(List<Ink> crosses, double x, double y) {
    crosses.add(new Ink.Line(Stroke.REGISTER, x - CROSS, y, x + CROSS, y));
    crosses.add(new Ink.Line(Stroke.REGISTER, x, y - CROSS, x, y + CROSS));
  }

  private List<Ink> neighbors(int row, int column, double left, double top) {
    List<Ink> words = new ArrayList<>();
    double middleX = left + ROOM + width / 2;
    double middleY = top + ROOM + height / 2;
    if (column > 0) {
      words.add(joins(left + 3, middleY, row, column - 1).turnedBy(90));
    }
    if (column + 1 < columns()) {
      words.add(joins(left + 2 * ROOM + width - 1, middleY, row, column + 1).turnedBy(90));
    }
    if (row > 0) {
      words.add(joins(middleX, top + 3, row - 1, column));
    }
    if (row + 1 < rows()) {
      words.add(joins(middleX, top + 2 * ROOM + height - 1, row + 1, column));
    }
    return words;
  }

  private static Words joins(double x, double y, int row, int column) {
    String words = "overlaps " + name(row, column) + ": lay cross on cross";
    return new Words(words, x, y, 8, false, Align.MIDDLE, 0, true);
  }
}

package org.barsheet.workbook.exposure;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.Movement;
import org.barsheet.plan.Film;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.FilmIndex;
import org.barsheet.workbook.pen.PageSize;
import org.barsheet.workbook.pen.Signs;
import org.barsheet.workbook.pen.TextWidth;

/** Which column of the exposure sheet holds what. */
public final class ExposureColumns {

  public static final int SHOT_FRAME = 0;
  public static final int FILM_FRAME = 1;
  public static final int TIMECODE = 2;
  static final int BEAT = 3;
  static final int MOTIF = 4;
  public static final int SOUND = 5;
  public static final int ACTION = 6;
  private static final int FIRST_LAYER = 7;

  /** Columns wider than the page by more than this are printed across the longer side. */
  private static final double MOST_SHRINKING = 1.06;

  /** 25 mm, to write in by hand. */
  private static final double NOTES_POINTS = 71;

  private static final double LEAST_PHOTOGRAPH_POINTS = 52;
  private static final double MOST_PHOTOGRAPH_POINTS = 110;

  private final int layers;
  private final double photographPoints;

  public ExposureColumns(FilmIndex index, List<Movement> movements) {
    this.layers = index.layers();
    this.photographPoints = photographPoints(movements);
  }

  private static double photographPoints(List<Movement> movements) {
    double widest =
        movements.stream()
            .mapToDouble(
                movement -> TextWidth.of(movement.name() + " 000", ExposureLooks.LETTERS.inBold()))
            .max()
            .orElse(0);
    double wanted = widest + TextWidth.PADDING + 1;
    return Math.min(MOST_PHOTOGRAPH_POINTS, Math.max(LEAST_PHOTOGRAPH_POINTS, wanted));
  }

  /** The page they fit on: upright unless they are too many or too wide for it. */
  public PageSize page(Film.Paper paper) {
    PageSize upright = new PageSize(paper, false);
    double wanted = list().stream().filter(Column::isPrinted).mapToDouble(Column::points).sum();
    return wanted <= upright.width() * MOST_SHRINKING ? upright : new PageSize(paper, true);
  }

  int layers() {
    return layers;
  }

  /** The column of a layer's photographs; its percent stand in the next one. */
  int photograph(int layer) {
    return FIRST_LAYER + 2 * layer;
  }

  int tick() {
    return photograph(layers);
  }

  int notes() {
    return tick() + 1;
  }

  /** The panel of each frame, beyond what is printed: on paper the shot's name stands above. */
  int panel() {
    return notes() + 1;
  }

  /** What the camera sees, beyond what is printed: where it moves the shot's heading says so. */
  int camera() {
    return panel() + 1;
  }

  int rowName() {
    return camera() + 1;
  }

  List<Column> list() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.numbers("shot\nframe", 28));
    columns.add(Column.numbers("film\nframe", 28));
    columns.add(Column.words("timecode", 47));
    columns.add(Column.words("bar,\nbeat", 30));
    columns.add(Column.words("", 15));
    columns.add(Column.words("sounds", 38, 2));
    columns.add(Column.words("action", 45, 6));
    for (int layer = 1; layer <= layers; layer++) {
      columns.add(Column.words("layer " + layer, photographPoints));
      columns.add(Column.numbers("%", 22));
    }
    columns.add(Column.toFillIn("taken", Signs.DONE, 13, 0));
    columns.add(Column.toFillIn("notes", NOTES_POINTS, 2));
    columns.add(Column.onScreen("panel", 40));
    columns.add(Column.onScreen("camera sees", 120));
    columns.add(Column.rowName());
    return columns;
  }
}

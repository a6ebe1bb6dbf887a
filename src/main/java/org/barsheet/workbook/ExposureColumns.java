package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.Movement;

/** Which column of the exposure sheet holds what. */
final class ExposureColumns {

  static final int PANEL = 0;
  static final int SHOT_FRAME = 1;
  static final int FILM_FRAME = 2;
  static final int TIMECODE = 3;
  static final int BEAT = 4;
  static final int MOTIF = 5;
  static final int SOUND = 6;
  static final int ACTION = 7;
  private static final int FIRST_LAYER = 8;

  /** Above this many layers the page lies on its side. */
  private static final int MOST_LAYERS_UPRIGHT = 2;

  private static final double LEAST_PICTURE_POINTS = 52;
  private static final double MOST_PICTURE_POINTS = 110;

  private final int layers;
  private final double picturePoints;

  ExposureColumns(FilmIndex index, List<Movement> movements) {
    this.layers = index.layers();
    this.picturePoints = picturePoints(movements);
  }

  private static double picturePoints(List<Movement> movements) {
    double widest =
        movements.stream()
            .mapToDouble(
                movement -> TextWidth.of(movement.name() + " 000", ExposureLooks.LETTERS.inBold()))
            .max()
            .orElse(0);
    double wanted = widest + TextWidth.PADDING + 1;
    return Math.min(MOST_PICTURE_POINTS, Math.max(LEAST_PICTURE_POINTS, wanted));
  }

  boolean landscape() {
    return layers > MOST_LAYERS_UPRIGHT;
  }

  int layers() {
    return layers;
  }

  /** The column of a layer's pictures; its percent stand in the next one. */
  int picture(int layer) {
    return FIRST_LAYER + 2 * layer;
  }

  int tick() {
    return picture(layers);
  }

  int notes() {
    return tick() + 1;
  }

  int rowName() {
    return notes() + 1;
  }

  List<Column> list() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("shot", 24));
    columns.add(Column.numbers("shot\nframe", 29));
    columns.add(Column.numbers("film\nframe", 31));
    columns.add(Column.words("timecode", 50));
    columns.add(Column.words("bar,\nbeat", 34));
    columns.add(Column.words("", 12));
    columns.add(Column.words("sounds", 54, 2));
    columns.add(Column.words("action", 72, 5));
    for (int layer = 1; layer <= layers; layer++) {
      columns.add(Column.words("layer " + layer, picturePoints));
      columns.add(Column.numbers("%", 28));
    }
    columns.add(Column.toFillIn(Signs.DONE, 13));
    columns.add(Column.toFillIn("notes", 24, 2));
    columns.add(Column.rowName());
    return columns;
  }
}

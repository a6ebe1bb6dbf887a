package org.barsheet.pixels;

import java.util.ArrayList;
import java.util.List;

/** How bright the still parts of a photograph are, in cells of linear light. */
public final class LightCells {

  private static final int ACROSS = 30;

  /** Darker than this there is more noise than light. */
  private static final double DARKEST = 0.003;

  /** Brighter than this a camera may have clipped. */
  private static final double BRIGHTEST = 0.96;

  private static final int FEWEST = 6;

  private final double[] red;
  private final double[] green;
  private final double[] blue;

  private LightCells(int cells) {
    this.red = new double[cells];
    this.green = new double[cells];
    this.blue = new double[cells];
  }

  /**
   * The cells of a photograph.
   *
   * @param moving parts where something moves, in pixels of the photograph: their cells count 0
   * @param move of the camera since the photograph that it will be compared with
   */
  public static LightCells of(Reduced small, List<Box> moving, CameraMove move) {
    int size = Math.max(2, small.width() / ACROSS);
    int across = small.width() / size;
    int down = small.height() / size;
    LightCells cells = new LightCells(across * down);
    int right = (int) Math.round(move.across() / small.factor());
    int below = (int) Math.round(move.down() / small.factor());
    for (int row = 0; row < down; row++) {
      for (int column = 0; column < across; column++) {
        Box cell = new Box(column * size, row * size, (column + 1) * size, (row + 1) * size);
        Box there = cell.moved(right, below);
        boolean outside =
            there.left() < 0
                || there.top() < 0
                || there.right() > small.width()
                || there.bottom() > small.height();
        Box inPhotograph = cell.times(small.factor());
        if (!outside && moving.stream().noneMatch(inPhotograph::meets)) {
          cells.add(small, there, row * across + column);
        }
      }
    }
    return cells;
  }

  private void add(Reduced small, Box cell, int index) {
    double count = cell.width() * cell.height();
    for (int y = (int) cell.top(); y < cell.bottom(); y++) {
      for (int x = (int) cell.left(); x < cell.right(); x++) {
        red[index] += small.red().at(x, y) / count;
        green[index] += small.green().at(x, y) / count;
        blue[index] += small.blue().at(x, y) / count;
      }
    }
  }

  /**
   * How much brighter this is than another photograph: the median of its cells.
   *
   * @return nothing known ({@link LightChange#NONE}) where too few cells can be compared
   */
  public LightChange since(LightCells first) {
    List<Double> brighter = new ArrayList<>();
    List<Double> redder = new ArrayList<>();
    List<Double> bluer = new ArrayList<>();
    for (int i = 0; i < green.length; i++) {
      if (isGood(i) && first.isGood(i)) {
        double greenStops = stops(green[i], first.green[i]);
        brighter.add(stops(luminance(i), first.luminance(i)));
        redder.add(stops(red[i], first.red[i]) - greenStops);
        bluer.add(stops(blue[i], first.blue[i]) - greenStops);
      }
    }
    return brighter.size() < FEWEST
        ? LightChange.NONE
        : new LightChange(
            true, Robust.median(brighter), Robust.median(redder), Robust.median(bluer), level());
  }

  private double luminance(int i) {
    return 0.2126 * red[i] + 0.7152 * green[i] + 0.0722 * blue[i];
  }

  private boolean isGood(int i) {
    return isGood(red[i]) && isGood(green[i]) && isGood(blue[i]);
  }

  private static boolean isGood(double light) {
    return light > DARKEST && light < BRIGHTEST;
  }

  private double level() {
    List<Double> levels = new ArrayList<>();
    for (int i = 0; i < green.length; i++) {
      if (isGood(i)) {
        levels.add(Reduced.level(luminance(i)));
      }
    }
    return levels.isEmpty() ? 0 : Robust.median(levels);
  }

  private static double stops(double light, double than) {
    return Math.log(light / than) / Math.log(2);
  }
}

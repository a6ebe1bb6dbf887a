package org.barsheet.pixels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.barsheet.pixels.Intruder.Kind;

/**
 * Finds what is in one photograph of a sequence and not in the others, outside of what moves. A
 * photograph is compared with the median of several, after its shift and its light are taken back;
 * a pixel differs where it is out of the range of its eight neighbors there. Near the moving part,
 * where its own shadow comes and goes, it differs where it is brighter than in any of those
 * photographs, or darker than a shadow leaves it.
 */
public final class Intruders {

  private static final int MOST_FOR_MEDIAN = 11;
  private static final double LEAST_CONTRAST = 10;
  private static final double NOISE = 5;

  /** A sharper photograph goes past the range of its neighbors by this share of it. */
  private static final double SHARPER = 0.3;

  private static final int LEAST_PIXELS = 14;
  private static final int LEAST_LENGTH = 6;

  /** Wider than this on average, in small pixels, it is no thread. */
  private static final double THIN = 4;

  private static final int CELL = 16;
  private static final int LEAST_CELLS = 4;

  /**
   * A shadow beside a lamp leaves this share of the light, or more (common practice, no source).
   */
  private static final double IN_SHADOW = 0.2;

  private final List<Proxy> proxies;
  private final List<CameraMove> moves;
  private final double[] stops;
  private final List<Box> moving;
  private final List<Box> near;
  private final double leastStops;
  private final Plane median;
  private final Plane low;
  private final Plane high;
  private final Plane lit;

  /**
   * A sequence to look through, photograph by photograph in order.
   *
   * @param moving parts that are not looked at, in pixels of the photographs
   * @param near parts where the moving part's own shadow may go, in the same
   * @param leastStops a soft change this large is told
   */
  public Intruders(
      List<Proxy> proxies,
      List<CameraMove> moves,
      double[] stops,
      List<Box> moving,
      List<Box> near,
      double leastStops) {
    this.proxies = List.copyOf(proxies);
    this.moves = List.copyOf(moves);
    this.stops = stops.clone();
    int factor = proxies.get(0).factor();
    this.moving = moving.stream().map(box -> box.times(1.0 / factor)).toList();
    this.near = near.stream().map(box -> box.times(1.0 / factor)).toList();
    this.leastStops = leastStops;
    List<Plane> some = some();
    this.median = ranked(some, some.size() / 2);
    this.low = ranged(median, -1);
    this.high = ranged(median, 1);
    this.lit = ranged(ranked(some, some.size() - 1), 1);
  }

  /** Several of them, evenly spread over the sequence. */
  private List<Plane> some() {
    int count = Math.min(MOST_FOR_MEDIAN, proxies.size());
    List<Plane> planes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int index = count == 1 ? 0 : (int) Math.round(i * (proxies.size() - 1.0) / (count - 1));
      planes.add(proxies.get(index).like(moves.get(index), stops[index]));
    }
    return planes;
  }

  /** Of each pixel the value of a rank among several. */
  private static Plane ranked(List<Plane> planes, int rank) {
    Plane first = planes.get(0);
    float[] values = new float[first.width() * first.height()];
    float[] column = new float[planes.size()];
    for (int y = 0; y < first.height(); y++) {
      for (int x = 0; x < first.width(); x++) {
        for (int i = 0; i < column.length; i++) {
          column[i] = planes.get(i).at(x, y);
        }
        Arrays.sort(column);
        values[y * first.width() + x] = column[rank];
      }
    }
    return new Plane(first.width(), first.height(), values);
  }

  /** The least or the largest value about each pixel. */
  private static Plane ranged(Plane plane, int sign) {
    int width = plane.width();
    int height = plane.height();
    float[] rows = new float[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float most = sign * plane.at(x, y);
        most = x > 0 ? Math.max(most, sign * plane.at(x - 1, y)) : most;
        most = x < width - 1 ? Math.max(most, sign * plane.at(x + 1, y)) : most;
        rows[y * width + x] = most;
      }
    }
    float[] values = new float[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float most = rows[y * width + x];
        most = y > 0 ? Math.max(most, rows[(y - 1) * width + x]) : most;
        most = y < height - 1 ? Math.max(most, rows[(y + 1) * width + x]) : most;
        values[y * width + x] = sign * most;
      }
    }
    return new Plane(width, height, values);
  }

  /** What is in a photograph and not in the others, the largest first. */
  public List<Intruder> in(int index) {
    Plane plane = proxies.get(index).like(moves.get(index), stops[index]);
    Plane differences = differences(plane, index);
    List<Intruder> found = solid(differences);
    found.addAll(soft(plane, index, found));
    found.sort(Comparator.comparingDouble((Intruder one) -> -area(one.box())));
    return List.copyOf(found);
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  private int margin(int index) {
    CameraMove move = moves.get(index);
    Proxy proxy = proxies.get(index);
    double rim =
        move.shift()
            + move.atCorner(proxy.width() * proxy.factor(), proxy.height() * proxy.factor());
    return 2 + (int) Math.ceil(rim / proxy.factor());
  }

  private Plane differences(Plane plane, int index) {
    double limit = Math.max(LEAST_CONTRAST, NOISE * noise(plane));
    int margin = margin(index);
    float[] values = new float[plane.width() * plane.height()];
    for (int y = margin; y < plane.height() - margin; y++) {
      for (int x = margin; x < plane.width() - margin; x++) {
        float value = plane.at(x, y);
        float off = outside(value, low.at(x, y), high.at(x, y));
        double slack = SHARPER * (high.at(x, y) - low.at(x, y));
        if (Math.abs(off) > limit + slack && !lies(moving, x, y)) {
          values[y * plane.width() + x] =
              lies(near, x, y) && isShadow(value, x, y, limit) ? 0 : off;
        }
      }
    }
    return new Plane(plane.width(), plane.height(), values);
  }

  private static float outside(float value, float low, float high) {
    return value > high ? value - high : value < low ? value - low : 0;
  }

  private double noise(Plane plane) {
    List<Double> sample = new ArrayList<>();
    for (int y = 3; y < plane.height(); y += 11) {
      for (int x = 3; x < plane.width(); x += 11) {
        if (!lies(moving, x, y)) {
          sample.add((double) plane.at(x, y) - median.at(x, y));
        }
      }
    }
    return sample.isEmpty()
        ? 0
        : Robust.spread(sample.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static boolean lies(List<Box> boxes, int x, int y) {
    for (Box box : boxes) {
      if (box.holds(x, y)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a shadow that comes or goes explains a level. */
  private boolean isShadow(float value, int x, int y, double limit) {
    double darkest =
        Reduced.level(IN_SHADOW * Reduced.linear((int) Math.max(0, low.at(x, y)))) - limit;
    return value > darkest && value < lit.at(x, y) + limit;
  }

  private List<Intruder> solid(Plane differences) {
    List<Intruder> found = new ArrayList<>();
    int factor = proxies.get(0).factor();
    for (Patch patch : Patch.all(differences)) {
      boolean large = patch.pixels() >= LEAST_PIXELS && patch.length() >= LEAST_LENGTH;
      if (large) {
        Kind kind =
            patch.pixels() / patch.length() < THIN && patch.length() >= 4 * THIN
                ? Kind.THIN
                : Kind.SOLID;
        found.add(new Intruder(patch.box().times(factor), kind, patch.mean()));
      }
    }
    return found;
  }

  private List<Intruder> soft(Plane plane, int index, List<Intruder> solid) {
    int across = plane.width() / CELL;
    int down = plane.height() / CELL;
    int factor = proxies.get(0).factor();
    float[] cells = new float[across * down];
    int margin = margin(index);
    for (int row = 0; row < down; row++) {
      for (int column = 0; column < across; column++) {
        Box cell = new Box(column * CELL, row * CELL, (column + 1) * CELL, (row + 1) * CELL);
        boolean left =
            cell.left() < margin
                || cell.top() < margin
                || cell.right() > plane.width() - margin
                || cell.bottom() > plane.height() - margin
                || moving.stream().anyMatch(cell::meets)
                || near.stream().anyMatch(cell::meets)
                || solid.stream().anyMatch(one -> one.box().meets(cell.times(factor)));
        if (!left) {
          double change = stops(plane, cell) - stops(median, cell);
          cells[row * across + column] = Math.abs(change) > leastStops ? (float) change : 0;
        }
      }
    }
    List<Intruder> found = new ArrayList<>();
    for (Patch patch : Patch.all(new Plane(across, down, cells))) {
      if (patch.pixels() >= LEAST_CELLS) {
        found.add(new Intruder(patch.box().times((double) CELL * factor), Kind.SOFT, patch.mean()));
      }
    }
    return found;
  }

  private static double stops(Plane plane, Box cell) {
    double sum = 0;
    for (int y = (int) cell.top(); y < cell.bottom(); y++) {
      for (int x = (int) cell.left(); x < cell.right(); x++) {
        sum += plane.at(x, y);
      }
    }
    double level = sum / (cell.width() * cell.height());
    return Math.log(Math.max(1e-3, Reduced.linear((int) Math.floor(level)) + slope(level)))
        / Math.log(2);
  }

  /** The part of a level that is no whole one. */
  private static double slope(double level) {
    int whole = (int) Math.floor(level);
    return whole >= 255 ? 0 : (level - whole) * (Reduced.linear(whole + 1) - Reduced.linear(whole));
  }
}

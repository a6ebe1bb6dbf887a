package org.barsheet.pixels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Measures how much of a hole is uncovered, by the color of the backing behind it. The backing's
 * and the paper's own tints are taken from the photographs, so are the edges of the hole that the
 * most open photograph shows.
 */
public final class HoleMeter {

  /** Below and above these shares of the way to the key, a pixel is wholly paper or backing. */
  private static final double PAPER = 0.3;

  static final double BACKING = 0.7;

  /** A hole may lie this share of its size elsewhere than planned. */
  private static final double ELSEWHERE = 0.25;

  /** Less of it uncovered than this, its edges cannot be told. */
  private static final double LEAST_OPEN = 0.25;

  private final List<HoleView> views;
  private final List<CameraMove> moves;
  private final int width;
  private final int height;
  private final Edges shown;
  private final int closed;
  private final int open;
  private final Tint paper;
  private final Tint key;

  /**
   * By how much paper colors a pixel more than backing does, where it is both: as much as it is
   * brighter where the light mixes in the lens, not at all where a JPEG mixes the colors of pixels;
   * the geometric mean is between.
   */
  private double brighter = 1;

  private final Box hole;

  /**
   * Which edges of the hole the most open photograph shows.
   *
   * @param left its left edge
   * @param top its top edge
   * @param right its right edge
   * @param bottom its bottom edge
   */
  public record Edges(boolean left, boolean top, boolean right, boolean bottom) {}

  /**
   * Looks at a sequence.
   *
   * @param width of the photographs in pixels
   * @param height of the photographs in pixels
   * @param planned where the hole is to be, in pixels of the first photograph
   * @param backing its color, RRGGBB
   */
  public HoleMeter(
      List<HoleView> views,
      List<CameraMove> moves,
      int width,
      int height,
      Box planned,
      Edges shown,
      String backing) {
    this.views = List.copyOf(views);
    this.moves = List.copyOf(moves);
    this.width = width;
    this.height = height;
    this.shown = shown;
    Tint said = Tint.of(backing);
    Tint gray = Tint.of(0.5, 0.5, 0.5);
    double[] rough = new double[views.size()];
    for (int i = 0; i < rough.length; i++) {
      rough[i] = share(i, planned, gray, said);
    }
    this.closed = least(rough);
    this.open = most(rough);
    this.paper = middle(closed, planned, gray, said, false).orElse(gray);
    this.key = middle(open, planned, paper, said, true).orElse(said);
    this.brighter =
        Math.sqrt(
            brightness(closed, planned, false) / Math.max(1e-6, brightness(open, planned, true)));
    this.hole = found(planned);
  }

  private static int least(double... values) {
    int best = 0;
    for (int i = 0; i < values.length; i++) {
      best = values[i] < values[best] ? i : best;
    }
    return best;
  }

  private static int most(double... values) {
    int best = 0;
    for (int i = 0; i < values.length; i++) {
      best = values[i] > values[best] ? i : best;
    }
    return best;
  }

  /** Where a box of the first photograph lies in another one. */
  private Box in(int index, Box box) {
    CameraMove move = moves.get(index);
    double x = (box.left() + box.right()) / 2 - width / 2.0;
    double y = (box.top() + box.bottom()) / 2 - height / 2.0;
    return box.moved(move.x(x, y) - x, move.y(x, y) - y);
  }

  /** The share of a pixel that is backing, by the tint of the whole pixel. */
  private double keyed(double way) {
    double share = shareOf(way, brighter);
    return Math.max(0, Math.min(1, (share - PAPER) / (BACKING - PAPER)));
  }

  private static double shareOf(double way, double brighter) {
    double clamped = Math.max(0, Math.min(1, way));
    return clamped * brighter / (clamped * brighter + 1 - clamped);
  }

  /** Median brightness of what is backing in a box, or of what is not; 1 where there is little. */
  private double brightness(int index, Box box, boolean backing) {
    HoleView view = views.get(index);
    Box there = in(index, box);
    List<Double> sums = new ArrayList<>();
    for (int row = 0; row < view.height(); row++) {
      for (int column = 0; column < view.width(); column++) {
        if (there.holds(view.x(column), view.y(row))
            && paper.wayTo(key, Tint.of(view, column, row)) > 0.5 == backing) {
          sums.add(view.red(column, row) + view.green(column, row) + view.blue(column, row));
        }
      }
    }
    return sums.size() < 20 ? 1 : Robust.median(sums);
  }

  /** Share of a box that is backing: pixels on its rim count by the part that lies inside. */
  private double share(int index, Box box, Tint from, Tint to) {
    HoleView view = views.get(index);
    Box there = in(index, box);
    double sum = 0;
    double area = 0;
    for (int row = 0; row < view.height(); row++) {
      double down = inside(view.y(row), view.factor(), there.top(), there.bottom());
      for (int column = 0; down > 0 && column < view.width(); column++) {
        double across = inside(view.x(column), view.factor(), there.left(), there.right());
        if (across > 0) {
          sum += across * down * keyed(from.wayTo(to, Tint.of(view, column, row)));
          area += across * down;
        }
      }
    }
    return area == 0 ? 0 : sum / area;
  }

  private static double inside(double middle, double size, double from, double to) {
    return Math.max(0, Math.min(middle + size / 2, to) - Math.max(middle - size / 2, from)) / size;
  }

  /** The middle tint of what is backing in a box, or of what is not. */
  private Optional<Tint> middle(int index, Box box, Tint from, Tint to, boolean backing) {
    HoleView view = views.get(index);
    Box there = in(index, box);
    List<Double> reds = new ArrayList<>();
    List<Double> greens = new ArrayList<>();
    for (int row = 0; row < view.height(); row++) {
      for (int column = 0; column < view.width(); column++) {
        if (there.holds(view.x(column), view.y(row))) {
          Tint tint = Tint.of(view, column, row);
          if (from.wayTo(to, tint) > 0.5 == backing) {
            reds.add(tint.red());
            greens.add(tint.green());
          }
        }
      }
    }
    return reds.size() < 20
        ? Optional.empty()
        : Optional.of(new Tint(Robust.median(reds), Robust.median(greens)));
  }

  private double backing(int index, int column, int row) {
    return keyed(paper.wayTo(key, Tint.of(views.get(index), column, row)));
  }

  /** The hole as the most open photograph shows it, or as planned where that is not to be told. */
  private Box found(Box planned) {
    if (share(open, planned, paper, key) < LEAST_OPEN) {
      return planned;
    }
    double[] down = HoleEdges.rows(views.get(open), (x, y) -> backing(open, x, y));
    double[] across = HoleEdges.columns(views.get(open), (x, y) -> backing(open, x, y));
    HoleView view = views.get(open);
    Optional<double[]> rows = HoleEdges.ends(down);
    Optional<double[]> columns = HoleEdges.ends(across);
    if (rows.isEmpty() || columns.isEmpty()) {
      return planned;
    }
    Box there =
        new Box(
            view.left() + columns.get()[0] * view.factor(),
            view.top() + rows.get()[0] * view.factor(),
            view.left() + columns.get()[1] * view.factor(),
            view.top() + rows.get()[1] * view.factor());
    Box away = in(open, there);
    Box first = there.moved(there.left() - away.left(), there.top() - away.top());
    Box fitted = HoleEdges.completed(planned, first, shown);
    boolean plausible =
        Math.abs(fitted.left() - planned.left()) < ELSEWHERE * planned.width()
            && Math.abs(fitted.right() - planned.right()) < ELSEWHERE * planned.width()
            && Math.abs(fitted.top() - planned.top()) < ELSEWHERE * planned.height()
            && Math.abs(fitted.bottom() - planned.bottom()) < ELSEWHERE * planned.height();
    return plausible ? fitted : planned;
  }

  /** Where the hole lies in the first photograph. */
  public Box hole() {
    return hole;
  }

  /** Whether backing was seen at all. */
  public boolean isSeen() {
    return share(open, hole, paper, key) > share(closed, hole, paper, key) + 0.02;
  }

  /** Share of the hole that is uncovered in a photograph, 0 to 1. */
  public double uncovered(int index) {
    return share(index, hole, paper, key);
  }

  /** How far backing and paper are apart for a keyer, as shares of the way between pure colors. */
  public double apart() {
    return paper.distance(key);
  }

  HoleView view(int index) {
    return views.get(index);
  }

  /** Where the hole lies in a photograph. */
  Box holeIn(int index) {
    return in(index, hole);
  }

  /** The most closed photograph. */
  int closed() {
    return closed;
  }

  /** Which of the hole's edges the most open photograph shows. */
  Edges shown() {
    return shown;
  }

  /** How far a pixel's tint is on the way from the paper's to the backing's. */
  double wayToBacking(HoleView view, int column, int row) {
    return paper.wayTo(key, Tint.of(view, column, row));
  }

  /**
   * Share of a pixel's light that is the backing's, where it falls on paper: it mixes in the lens.
   */
  double spilt(HoleView view, int column, int row) {
    return shareOf(wayToBacking(view, column, row), brighter * brighter);
  }

  /** Mean linear light in the hole, for a lamp that brightens. */
  public static double light(HoleView view, Box hole) {
    double sum = 0;
    int count = 0;
    for (int row = 0; row < view.height(); row++) {
      for (int column = 0; column < view.width(); column++) {
        if (hole.holds(view.x(column), view.y(row))) {
          sum += view.luminance(column, row);
          count++;
        }
      }
    }
    return count == 0 ? 0 : sum / count;
  }
}

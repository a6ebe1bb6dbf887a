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

  private static final double BACKING = 0.7;

  /** A hole may lie this share of its size elsewhere than planned. */
  private static final double ELSEWHERE = 0.25;

  /** Less of it uncovered than this, its edges cannot be told. */
  private static final double LEAST_OPEN = 0.25;

  private static final int PATCHES = 6;

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
    return sums.size() < 20 ? 1 : median(sums);
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
        : Optional.of(new Tint(median(reds), median(greens)));
  }

  private static double median(List<Double> values) {
    return Robust.median(values.stream().mapToDouble(Double::doubleValue).toArray());
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

  /**
   * How unevenly the uncovered backing is lit: stops from its middle to its worst patch, a sixth of
   * the hole wide and high.
   */
  public double unevenness(int index) {
    HoleView view = views.get(index);
    Box there = in(index, hole).padded(-2.0 * view.factor());
    List<List<Double>> patches = new ArrayList<>();
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < PATCHES * PATCHES; i++) {
      patches.add(new ArrayList<>());
    }
    int[] pixels = new int[PATCHES * PATCHES];
    for (int row = 0; row < view.height(); row++) {
      for (int column = 0; column < view.width(); column++) {
        if (there.holds(view.x(column), view.y(row))) {
          int patch = patch(there, view.x(column), view.y(row));
          pixels[patch]++;
          if (paper.wayTo(key, Tint.of(view, column, row)) > BACKING) {
            patches.get(patch).add(view.luminance(column, row));
            all.add(view.luminance(column, row));
          }
        }
      }
    }
    double worst = 0;
    for (int i = 0; i < pixels.length; i++) {
      if (pixels[i] > 0 && patches.get(i).size() > 0.8 * pixels[i]) {
        double stops = Math.log(median(patches.get(i)) / median(all)) / Math.log(2);
        worst = Math.abs(stops) > Math.abs(worst) ? stops : worst;
      }
    }
    return worst;
  }

  private static int patch(Box box, double x, double y) {
    int column = (int) (PATCHES * (x - box.left()) / box.width());
    int row = (int) (PATCHES * (y - box.top()) / box.height());
    return Math.min(PATCHES - 1, row) * PATCHES + Math.min(PATCHES - 1, column);
  }

  /**
   * How much of the backing's color lies on the paper beside the hole, more than in the most closed
   * photograph: 0 none, 1 the paper looks like backing.
   */
  public double spill(int index) {
    return rim(index) - rim(closed);
  }

  private double rim(int index) {
    HoleView view = views.get(index);
    Box there = in(index, hole);
    double margin = 0.03 * Math.min(hole.width(), hole.height()) + view.factor();
    Box inner = there.padded(margin);
    Box outer = there.padded(3 * margin);
    List<Double> ways = new ArrayList<>();
    for (int row = 0; row < view.height(); row++) {
      for (int column = 0; column < view.width(); column++) {
        double x = view.x(column);
        double y = view.y(row);
        if (outer.holds(x, y) && !inner.holds(x, y) && isOnShownSide(inner, x, y)) {
          // Backing's light on paper mixes in the lens.
          double way = paper.wayTo(key, Tint.of(view, column, row));
          ways.add(shareOf(way, brighter * brighter));
        }
      }
    }
    return ways.size() < 20 ? 0 : median(ways);
  }

  private boolean isOnShownSide(Box inner, double x, double y) {
    boolean besideLeft = x < inner.left();
    boolean besideRight = x >= inner.right();
    boolean above = y < inner.top();
    boolean below = y >= inner.bottom();
    return (besideLeft && shown.left() && !above && !below)
        || (besideRight && shown.right() && !above && !below)
        || (above && shown.top() && !besideLeft && !besideRight)
        || (below && shown.bottom() && !besideLeft && !besideRight);
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

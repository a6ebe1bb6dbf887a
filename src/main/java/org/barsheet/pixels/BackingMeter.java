package org.barsheet.pixels;

import java.util.ArrayList;
import java.util.List;

/**
 * Measures how well the backing behind a hole will key: how evenly it is lit, how far it spills.
 */
public final class BackingMeter {

  private static final int PATCHES = 6;

  private final HoleMeter meter;

  /** Looks at the backing that a meter found. */
  public BackingMeter(HoleMeter meter) {
    this.meter = meter;
  }

  /**
   * How unevenly the uncovered backing is lit: stops from its middle to its worst patch, a sixth of
   * the hole wide and high.
   */
  public double unevenness(int index) {
    HoleView view = meter.view(index);
    Box there = meter.holeIn(index).padded(-2.0 * view.factor());
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
          if (meter.wayToBacking(view, column, row) > HoleMeter.BACKING) {
            patches.get(patch).add(view.luminance(column, row));
            all.add(view.luminance(column, row));
          }
        }
      }
    }
    double worst = 0;
    for (int i = 0; i < pixels.length; i++) {
      if (pixels[i] > 0 && patches.get(i).size() > 0.8 * pixels[i]) {
        double stops = Math.log(Robust.median(patches.get(i)) / Robust.median(all)) / Math.log(2);
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
    return rim(index) - rim(meter.closed());
  }

  private double rim(int index) {
    HoleView view = meter.view(index);
    Box there = meter.holeIn(index);
    double margin = 0.03 * Math.min(meter.hole().width(), meter.hole().height()) + view.factor();
    Box inner = there.padded(margin);
    Box outer = there.padded(3 * margin);
    List<Double> ways = new ArrayList<>();
    for (int row = 0; row < view.height(); row++) {
      for (int column = 0; column < view.width(); column++) {
        double x = view.x(column);
        double y = view.y(row);
        if (outer.holds(x, y) && !inner.holds(x, y) && isOnShownSide(inner, x, y)) {
          ways.add(meter.spilt(view, column, row));
        }
      }
    }
    return ways.size() < 20 ? 0 : Robust.median(ways);
  }

  private boolean isOnShownSide(Box inner, double x, double y) {
    boolean besideLeft = x < inner.left();
    boolean besideRight = x >= inner.right();
    boolean above = y < inner.top();
    boolean below = y >= inner.bottom();
    return (besideLeft && meter.shown().left() && !above && !below)
        || (besideRight && meter.shown().right() && !above && !below)
        || (above && meter.shown().top() && !besideLeft && !besideRight)
        || (below && meter.shown().bottom() && !besideLeft && !besideRight);
  }
}

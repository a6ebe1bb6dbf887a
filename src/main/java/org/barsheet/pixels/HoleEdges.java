package org.barsheet.pixels;

import java.util.Arrays;
import java.util.Optional;
import org.barsheet.pixels.HoleMeter.Edges;

/** Finds the edges of a hole where its backing shows. */
final class HoleEdges {

  private static final double HALF = 0.5;

  /** The share of a pixel that is backing. */
  interface Backing {
    double at(int column, int row);
  }

  private HoleEdges() {}

  /** How many pixels of each row are backing. */
  static double[] rows(HoleView view, Backing backing) {
    double[] rows = new double[view.height()];
    for (int row = 0; row < view.height(); row++) {
      for (int column = 0; column < view.width(); column++) {
        rows[row] += backing.at(column, row);
      }
    }
    return rows;
  }

  /** How many pixels of each column are backing. */
  static double[] columns(HoleView view, Backing backing) {
    double[] columns = new double[view.width()];
    for (int row = 0; row < view.height(); row++) {
      for (int column = 0; column < view.width(); column++) {
        columns[column] += backing.at(column, row);
      }
    }
    return columns;
  }

  /** Where a profile rises to and falls from half of its plateau, in its own steps. */
  static Optional<double[]> ends(double... profile) {
    double most = 0;
    for (double value : profile) {
      most = Math.max(most, value);
    }
    double limit = HALF * most;
    double[] high = Arrays.stream(profile).filter(value -> value > limit).toArray();
    if (most <= 0 || high.length == 0) {
      return Optional.empty();
    }
    double half = HALF * Robust.median(high);
    int first = 0;
    while (first < profile.length && profile[first] < half) {
      first++;
    }
    int last = profile.length - 1;
    while (last >= 0 && profile[last] < half) {
      last--;
    }
    return first > last
        ? Optional.empty()
        : Optional.of(
            new double[] {
              first + HALF - risen(profile, first, -1, half),
              last + HALF + risen(profile, last, 1, half)
            });
  }

  /** How far before a step, toward {@code way}, the profile crosses a value: 0 to 1 steps. */
  private static double risen(double[] profile, int index, int way, double half) {
    int before = index + way;
    double low = before < 0 || before >= profile.length ? 0 : profile[before];
    return profile[index] == low ? 0 : (profile[index] - half) / (profile[index] - low);
  }

  /** The hole, where only some of its edges show: the others lie as far from them as planned. */
  static Box completed(Box planned, Box seen, Edges shown) {
    double scale =
        shown.top() && shown.bottom()
            ? seen.height() / planned.height()
            : shown.left() && shown.right() ? seen.width() / planned.width() : 1;
    double width = planned.width() * scale;
    double height = planned.height() * scale;
    double left = shown.left() ? seen.left() : seen.right() - width;
    double right = shown.right() ? seen.right() : left + width;
    double top = shown.top() ? seen.top() : seen.bottom() - height;
    double bottom = shown.bottom() ? seen.bottom() : top + height;
    return right > left && bottom > top ? new Box(left, top, right, bottom) : planned;
  }
}

package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Puts marks that stand too close together on steps, one beside the other, as a diagonal scale
 * does: no two on one step are closer than an eye can tell apart.
 */
final class Steps {

  /** An eye tells marks apart that stand so far from each other: common practice, no source. */
  static final double LEAST = 0.5;

  /** From one step to the next, and how long a mark on one is, in millimeters. */
  static final double HIGH = 2.8;

  static final double MARK = 2.2;

  /** Marks in tenths of a millimeter fill no more. */
  private static final int MOST = 5;

  /** Room for rounding. */
  private static final double DUST = 1e-9;

  private Steps() {}

  /**
   * A mark on its step.
   *
   * @param step from 0
   */
  record Place(Tick tick, int step) {}

  /**
   * The steps of some marks. What finds no room on any of them joins the mark before: it is closer
   * to it than a hand can set.
   *
   * @param ticks in ascending order
   * @param millimeters where a mark lies along the line it is read from
   */
  static List<Place> of(List<Tick> ticks, ToDoubleFunction<Tick> millimeters) {
    double[] ends = new double[MOST];
    Arrays.fill(ends, Double.NEGATIVE_INFINITY);
    List<Place> places = new ArrayList<>();
    for (Tick tick : ticks) {
      double at = millimeters.applyAsDouble(tick);
      int step = 0;
      while (step < MOST && at - ends[step] < LEAST - DUST) {
        step++;
      }
      if (step < MOST) {
        places.add(new Place(tick, step));
        ends[step] = at;
      } else {
        Place before = places.remove(places.size() - 1);
        places.add(new Place(before.tick().upTo(tick.last()), before.step()));
      }
    }
    return places;
  }

  /**
   * Those of some marks that get a label: every one if that makes no more than the most, else those
   * of every second photograph, every fourth, every eighth …
   */
  static List<Place> labeled(List<Place> places, int most) {
    int every = 1;
    List<Place> labeled = places;
    while (labeled.size() > most) {
      every *= 2;
      int step = every;
      labeled = places.stream().filter(place -> place.tick().holdsMultipleOf(step)).toList();
    }
    return labeled;
  }

  /** How many steps some marks take. */
  static int count(List<Place> places) {
    return 1 + places.stream().mapToInt(Place::step).max().orElse(0);
  }
}

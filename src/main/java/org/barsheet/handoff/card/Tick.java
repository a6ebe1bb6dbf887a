package org.barsheet.handoff.card;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.exposure.PhotographMeasures;

/**
 * A mark of a gauge: where a photograph, or several that look alike, is set.
 *
 * @param at degrees or millimeters, the very number on the card
 * @param first number of the first photograph set there
 * @param last number of the last one
 */
record Tick(BigDecimal at, int first, int last) {

  /** The marks of a movement by one of its measures, in order of photograph. */
  static List<Tick> of(
      Movement movement, Function<PhotographMeasures, Optional<BigDecimal>> measure) {
    List<Tick> ticks = new ArrayList<>();
    for (MovedPhotograph photograph : movement.photographs()) {
      Optional<BigDecimal> at = measure.apply(photograph.measures());
      if (at.isPresent()) {
        add(ticks, at.get(), photograph.photograph().number());
      }
    }
    return ticks;
  }

  private static void add(List<Tick> ticks, BigDecimal at, int number) {
    int last = ticks.size() - 1;
    if (last >= 0 && ticks.get(last).at().compareTo(at) == 0) {
      ticks.set(last, new Tick(at, ticks.get(last).first(), number));
    } else {
      ticks.add(new Tick(at, number, number));
    }
  }

  /** The same mark for the photographs after it as well. */
  Tick upTo(int number) {
    return new Tick(at, first, number);
  }

  /** {@code 14}, or {@code 28-30} where several photographs are set alike. */
  String label() {
    return first == last ? Integer.toString(first) : first + "-" + last;
  }

  /** Whether one of its photographs has a number that can be divided by another. */
  boolean holdsMultipleOf(int number) {
    return last / number * number >= first;
  }

  /** Whether it is drawn longer, so that tens are found at a glance. */
  boolean isRound() {
    return holdsMultipleOf(10);
  }
}

package org.barsheet.shooting;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/** How long work takes and when it is done, from the hours it was put on. */
final class WorkTimes {

  private WorkTimes() {}

  /** The time of some work; empty without rates, or without work. */
  static Optional<WorkTime> of(List<Slot> slots, Optional<Rates> rates) {
    return slots.isEmpty() ? Optional.empty() : rates.map(pace -> time(slots, pace));
  }

  private static WorkTime time(List<Slot> slots, Rates rates) {
    BigFraction hours =
        slots.stream()
            .map(slot -> slot.ends().subtract(slot.begins()))
            .reduce(BigFraction.ZERO, BigFraction::add);
    if (rates.day().isEmpty()) {
      return new WorkTime(
          hours.doubleValue(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          Optional.empty());
    }
    int first = rates.dayOf(slots.get(0).begins());
    int last = rates.dayOf(slots.get(slots.size() - 1).begins());
    return new WorkTime(
        hours.doubleValue(),
        OptionalInt.of(first),
        OptionalInt.of(last),
        rates.date(first),
        rates.date(last));
  }
}

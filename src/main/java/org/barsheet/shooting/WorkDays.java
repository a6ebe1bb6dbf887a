package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/** Work day by day; setup by setup, where the plan does not say how long a day is. */
final class WorkDays {

  private final List<Setup> setups;
  private final Optional<Rates> rates;
  private final Map<Integer, Integer> numbers = new LinkedHashMap<>();

  private WorkDays(List<Setup> setups, Optional<Rates> rates) {
    this.setups = setups;
    this.rates = rates;
  }

  static List<WorkDay> of(List<Setup> setups, List<Slot> slots, Optional<Rates> rates) {
    return new WorkDays(setups, rates).all(slots);
  }

  private List<WorkDay> all(List<Slot> slots) {
    Map<Integer, List<Stretch>> days = new LinkedHashMap<>();
    for (Slot slot : slots) {
      numbers.putIfAbsent(slot.setup(), numbers.size() + 1);
      int day = dayOf(slot).orElse(numbers.get(slot.setup()));
      days.computeIfAbsent(day, number -> new ArrayList<>()).add(stretch(slot));
    }
    List<WorkDay> all = new ArrayList<>();
    days.forEach((number, stretches) -> all.add(day(number, stretches)));
    return all;
  }

  private OptionalInt dayOf(Slot slot) {
    return rates
        .filter(pace -> pace.day().isPresent())
        .map(pace -> OptionalInt.of(pace.dayOf(slot.begins())))
        .orElse(OptionalInt.empty());
  }

  private WorkDay day(int number, List<Stretch> stretches) {
    boolean days = rates.flatMap(Rates::day).isPresent();
    return days
        ? new WorkDay("day " + number, rates.flatMap(pace -> pace.date(number)), stretches)
        : new WorkDay("setup " + number, Optional.empty(), stretches);
  }

  private Stretch stretch(Slot slot) {
    int number = numbers.getOrDefault(slot.setup(), 0);
    Optional<Step> step =
        slot.piece() == Slot.SETTING_UP
            ? Optional.empty()
            : Optional.of(setups.get(number - 1).steps().get(slot.piece()));
    return new Stretch(
        number, step, slot.from(), slot.to(), inDay(slot, slot.begins()), inDay(slot, slot.ends()));
  }

  /** Hours since the morning of the day on which a slot begins. */
  private OptionalDouble inDay(Slot slot, BigFraction time) {
    if (rates.isEmpty()) {
      return OptionalDouble.empty();
    }
    BigFraction morning =
        rates
            .get()
            .day()
            .map(day -> day.multiply(rates.get().dayOf(slot.begins()) - 1))
            .orElse(BigFraction.ZERO);
    return OptionalDouble.of(time.subtract(morning).doubleValue());
  }
}

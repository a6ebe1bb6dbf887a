package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.shooting.DayFiller.Piece;

/**
 * Puts setups on working days. Where some order of them takes no more days and parts no movement
 * that a day can hold, the one nearest to the story is kept; work then stops early on some
 * evenings. A movement longer than a day is parted where it moves least.
 */
final class Calendar {

  /** Orders begun before the story's is kept. */
  private static final int MOST_TRIED = 20_000;

  /** Whether one setup has to come after another. */
  interface Follows {
    boolean test(int setup, int other);
  }

  private final Rates rates;
  private final List<List<Piece>> setups;
  private final Follows follows;
  private final BigFraction work;
  private final BigFraction limit;
  private final Map<Long, BigFraction> failed = new HashMap<>();
  private int tried;

  /**
   * Setups to put on days.
   *
   * @param setups what each takes, in story order
   */
  Calendar(Rates rates, List<List<Piece>> setups, Follows follows) {
    this.rates = rates;
    this.setups = setups;
    this.follows = follows;
    int photographs = setups.stream().flatMap(List::stream).mapToInt(Piece::photographs).sum();
    this.work = rates.settingUp().multiply(setups.size()).add(rates.photographs(photographs));
    this.limit = rates.day().map(day -> day.multiply(rates.days(work))).orElse(work);
  }

  /** The work in order. */
  List<Slot> slots() {
    List<Integer> story = IntStream.range(0, setups.size()).boxed().toList();
    Optional<List<Integer>> whole =
        rates.day().isPresent() && setups.size() < Long.SIZE
            ? fitting(List.of(), 0, BigFraction.ZERO)
            : Optional.empty();
    if (whole.isEmpty()) {
      return filled(story, limit.subtract(work), BigFraction.ZERO).slots();
    }
    DayFiller stopping = filled(whole.get(), limit, limit);
    return stopping.end().compareTo(limit) <= 0
        ? stopping.slots()
        : filled(whole.get(), limit, BigFraction.ZERO).slots();
  }

  private DayFiller filled(List<Integer> order, BigFraction toWait, BigFraction toStop) {
    DayFiller filler = new DayFiller(rates, BigFraction.ZERO, toWait, toStop);
    order.forEach(setup -> filler.add(setup, setups.get(setup)));
    return filler;
  }

  /** An order that goes on from one begun, in which everything is done in time and unparted. */
  private Optional<List<Integer>> fitting(List<Integer> begun, long done, BigFraction at) {
    if (begun.size() == setups.size()) {
      return Optional.of(begun);
    }
    BigFraction known = failed.get(done);
    if ((known != null && known.compareTo(at) <= 0) || ++tried > MOST_TRIED) {
      return Optional.empty();
    }
    for (int setup = 0; setup < setups.size(); setup++) {
      Optional<List<Integer>> found =
          isDue(setup, done) ? goingOn(begun, done, at, setup) : Optional.empty();
      if (found.isPresent()) {
        return found;
      }
    }
    failed.put(done, at);
    return Optional.empty();
  }

  private Optional<List<Integer>> goingOn(
      List<Integer> begun, long done, BigFraction at, int setup) {
    BigFraction then =
        new DayFiller(rates, at, limit, BigFraction.ZERO).add(setup, setups.get(setup)).end();
    List<Integer> more = new ArrayList<>(begun);
    more.add(setup);
    return then.compareTo(limit) > 0 ? Optional.empty() : fitting(more, done | 1L << setup, then);
  }

  private boolean isDue(int setup, long done) {
    return (done >> setup & 1) == 0
        && IntStream.range(0, setups.size())
            .allMatch(other -> (done >> other & 1) == 1 || !follows.test(setup, other));
  }
}

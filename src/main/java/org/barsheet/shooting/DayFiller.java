package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Lays work on days, hour by hour. What does not fit into what is left of a day waits for the
 * morning while there are hours to spare, and is parted by the night otherwise. A photograph that
 * is begun is finished.
 */
final class DayFiller {

  /**
   * What is photographed in one go.
   *
   * @param steps how far it moves from each photograph to the next, one fewer than photographs
   */
  record Piece(List<Double> steps) {

    Piece {
      steps = List.copyOf(steps);
    }

    int photographs() {
      return steps.size() + 1;
    }
  }

  private final Rates rates;
  private final List<Slot> slots = new ArrayList<>();
  private BigFraction at;
  private BigFraction toWait;
  private BigFraction toStop;

  /**
   * Work from some hour on.
   *
   * @param toWait hours that evenings may be left unused before something that would be parted
   * @param toStop the same for stopping where a parted movement moves least
   */
  DayFiller(Rates rates, BigFraction from, BigFraction toWait, BigFraction toStop) {
    this.rates = rates;
    this.at = from;
    this.toWait = toWait;
    this.toStop = toStop;
  }

  /** Adds a setup. */
  DayFiller add(int setup, List<Piece> pieces) {
    setUp(setup);
    for (int piece = 0; piece < pieces.size(); piece++) {
      take(setup, piece, pieces.get(piece));
    }
    return this;
  }

  List<Slot> slots() {
    return slots;
  }

  BigFraction end() {
    return at;
  }

  /** Nothing is photographed yet, so a night in between does no harm. */
  private void setUp(int setup) {
    BigFraction end = at.add(rates.settingUp());
    while (rates.day().isPresent() && end.compareTo(at.add(room())) > 0) {
      slot(setup, Slot.SETTING_UP, 0, 0, at.add(room()));
    }
    if (end.compareTo(at) > 0) {
      slot(setup, Slot.SETTING_UP, 0, 0, end);
    }
  }

  private void take(int setup, int piece, Piece work) {
    int taken = 0;
    while (taken < work.photographs()) {
      int left = work.photographs() - taken;
      BigFraction needed = rates.photographs(left);
      waitFor(needed);
      int to = taken + left;
      boolean parted = rates.day().isPresent() && needed.compareTo(room()) > 0;
      if (parted) {
        int today = Math.min(left, ceiling(room().divide(rates.photograph())));
        to = taken + stillest(work, taken, today);
      }
      slot(setup, piece, taken, to, at.add(rates.photographs(to - taken)));
      if (parted && to < work.photographs()) {
        stop(taken, to);
      }
      taken = to;
    }
  }

  /** What a whole day can hold waits for the morning rather than be parted. */
  private void waitFor(BigFraction needed) {
    boolean held = rates.day().isPresent() && needed.compareTo(rates.day().get()) <= 0;
    if (held && needed.compareTo(room()) > 0 && room().compareTo(toWait) <= 0) {
      toWait = toWait.subtract(room());
      at = at.add(room());
    }
  }

  /** The evening is over where a movement was stopped before it. */
  private void stop(int from, int to) {
    BigFraction began = at.subtract(rates.photographs(to - from));
    if (rates.dayOf(began) == rates.dayOf(at) && !isMorning()) {
      toStop = toStop.subtract(room());
      at = at.add(room());
    }
  }

  private boolean isMorning() {
    return room().equals(rates.day().orElseThrow());
  }

  /**
   * How many photographs to take today: of the later half of those that fit, the most after which
   * it moves least, if there are hours to spare.
   */
  private int stillest(Piece work, int from, int today) {
    int best = today;
    for (int count = today - 1; 2 * count >= today && count > 0; count--) {
      boolean spare = rates.photographs(today - count).compareTo(toStop) <= 0;
      double step = work.steps().get(from + count - 1);
      if (spare && from + best < work.photographs() && step < work.steps().get(from + best - 1)) {
        best = count;
      }
    }
    return best;
  }

  private void slot(int setup, int piece, int from, int to, BigFraction end) {
    slots.add(new Slot(setup, piece, from, to, at, end));
    at = end;
  }

  /** Hours to the evening; a whole day in the morning. */
  private BigFraction room() {
    BigFraction day = rates.day().orElseThrow();
    return day.multiply(rates.dayOf(at)).subtract(at);
  }

  private static int ceiling(BigFraction number) {
    int whole = number.intValue();
    return BigFraction.of(whole).equals(number) ? whole : whole + 1;
  }
}

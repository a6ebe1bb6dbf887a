package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.TempoMap;

/**
 * Bends a written tempo map so that pinned bars begin exactly at their times in a recording.
 * Between two pins every tempo is scaled by one factor, so ritardandos keep their shape; outside
 * them the factor between the first and the last pin holds.
 */
final class PinnedTempo {

  /** How much faster or slower than written a recording may be between two pins. */
  private static final int MOST_STRETCH = 4;

  private final TempoMap written;
  private final List<PinnedBar> pins;

  /**
   * A pin with the music it holds.
   *
   * @param bar the bar, the first time it is played
   * @param at when it begins
   */
  record PinnedBar(Bar bar, Seconds at) {
    @Override
    public String toString() {
      return "bar " + bar.number() + " at " + at.toDecimal(3).toPlainString() + " s";
    }
  }

  private PinnedTempo(TempoMap written, List<PinnedBar> pins) {
    this.written = written;
    this.pins = pins;
  }

  /**
   * Finds the bars of pins, each the first time it is played.
   *
   * @return in order of their bars
   * @throws InputException if a bar does not exist, a time is negative, or two pins clash
   */
  static List<PinnedBar> locate(BarGrid bars, List<TempoRequest.Pin> pins) {
    List<Problem> problems = new ArrayList<>();
    for (TempoRequest.Pin pin : pins) {
      if (bars.numbered(pin.bar()).isEmpty()) {
        problems.add(
            PinOrder.problem(
                "there is no bar " + pin.bar() + " to pin",
                "the bars run from " + bars.first().number() + " to " + bars.last().number()));
      }
    }
    List<TempoRequest.Pin> ordered = PinOrder.of(pins);
    problems.addAll(PinOrder.problems(ordered));
    PinOrder.refuse(problems);
    return ordered.stream()
        .map(pin -> new PinnedBar(bars.numbered(pin.bar()).get(0), pin.at()))
        .sorted(Comparator.comparingInt(pin -> pin.bar().index()))
        .toList();
  }

  /**
   * The bent map.
   *
   * @param pins at least one, as {@link #locate} gives them
   * @throws InputException if two pins ask for more than four times the written tempo, or less than
   *     a quarter of it
   */
  static TempoMap bend(TempoMap written, List<PinnedBar> pins) {
    return new PinnedTempo(written, pins).bend();
  }

  private TempoMap bend() {
    List<Problem> problems = new ArrayList<>();
    List<BigFraction> factors = factors(problems);
    PinOrder.refuse(problems);
    List<TempoMap.Change> changes = new ArrayList<>();
    for (int section = 0; section < factors.size(); section++) {
      long from = section == 0 ? 0 : startOf(section - 1);
      long to = section < pins.size() ? startOf(section) : Long.MAX_VALUE;
      addScaled(changes, from, to, factors.get(section));
    }
    PinnedBar first = pins.get(0);
    Seconds lead = written.secondsAt(startOf(0)).minus(written.secondsAt(0));
    Seconds tickZero = first.at().minus(lead.times(factors.get(0)));
    return TempoMap.of(written.ticksPerQuarter(), changes, tickZero);
  }

  private long startOf(int pin) {
    return pins.get(pin).bar().startTick();
  }

  /** One factor before the first pin, one between every two, one after the last. */
  private List<BigFraction> factors(List<Problem> problems) {
    List<BigFraction> factors = new ArrayList<>();
    int last = pins.size() - 1;
    BigFraction overall = last == 0 ? BigFraction.ONE : factor(0, last);
    factors.add(overall);
    for (int i = 1; i <= last; i++) {
      BigFraction factor = factor(i - 1, i);
      boolean tooFast = factor.multiply(MOST_STRETCH).compareTo(BigFraction.ONE) < 0;
      if (tooFast || factor.compareTo(BigFraction.of(MOST_STRETCH)) > 0) {
        problems.add(
            PinOrder.problem(
                "between "
                    + pins.get(i - 1)
                    + " and "
                    + pins.get(i)
                    + " the music would run "
                    + (tooFast ? "more than 4 times as fast" : "more than 4 times as slow")
                    + " as written",
                "correct one of the two times, or the bar numbers"));
      }
      factors.add(factor);
    }
    factors.add(overall);
    return factors;
  }

  private BigFraction factor(int from, int to) {
    Seconds asked = pins.get(to).at().minus(pins.get(from).at());
    Seconds writtenLength = written.secondsAt(startOf(to)).minus(written.secondsAt(startOf(from)));
    return asked.dividedBy(writtenLength);
  }

  private void addScaled(List<TempoMap.Change> changes, long from, long to, BigFraction factor) {
    if (from >= to) {
      return;
    }
    changes.add(new TempoMap.Change(from, written.perQuarterAt(from).times(factor)));
    for (TempoMap.Stretch stretch : written.stretches()) {
      if (stretch.startTick() > from && stretch.startTick() < to) {
        changes.add(new TempoMap.Change(stretch.startTick(), stretch.perQuarter().times(factor)));
      }
    }
  }
}

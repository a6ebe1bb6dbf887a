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
 * Between two pins every tempo is scaled by one factor, so ritardandos keep their shape; where the
 * tempo drifts on through a pin the factor changes smoothly, beat by beat ({@link PinCurve}).
 * Outside the pins the factor between the first and the last one holds.
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
      if (bars.numbered(pin.bar()).isEmpty() && pin.bar() <= bars.last().number()) {
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
        .map(pin -> new PinnedBar(bar(bars, pin.bar()), pin.at()))
        .sorted(Comparator.comparingInt(pin -> pin.bar().index()))
        .toList();
  }

  /** A bar the first time it is played; after the last bar there would be more of its kind. */
  private static Bar bar(BarGrid bars, int number) {
    Bar last = bars.last();
    if (number <= last.number()) {
      return bars.numbered(number).get(0);
    }
    int more = number - last.number();
    long later = more * last.lengthTicks();
    List<Long> beats = last.beatTicks().stream().map(tick -> tick + later).toList();
    return new Bar(
        last.index() + more,
        number,
        1,
        last.meter(),
        last.startTick() + later,
        last.endTick() + later,
        beats,
        last.fullBeats());
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
    addScaled(changes, 0, startOf(0), factors.get(0));
    PinCurve curve = PinCurve.through(written, pins);
    for (int section = 1; section < pins.size(); section++) {
      if (curve.isStraight(section)) {
        addScaled(changes, startOf(section - 1), startOf(section), factors.get(section));
      } else {
        curve.addSection(section, changes);
      }
    }
    addScaled(changes, startOf(pins.size() - 1), Long.MAX_VALUE, factors.get(pins.size()));
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

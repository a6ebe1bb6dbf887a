package org.barsheet.pulse;

import java.util.List;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.PinnedTempo.PinnedBar;
import org.barsheet.score.TempoMap;

/**
 * A curve from written time to pinned time that goes through all pins and never turns back
 * (monotone cubic interpolation: F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17, 1980).
 * It is smooth where the tempo drifts; where it changes at once from one stretch between pins to
 * the next, as at a fermata, each keeps to its own pins.
 */
final class PinCurve {

  private static final long NANOS = 1_000_000_000;

  /**
   * Two stretches of which one is so many times slower are not one drift. Our choice; slopes this
   * near to the straight ones are far from the 3 times at which a cubic may turn back.
   */
  private static final double BREAK = 1.2;

  private final TempoMap written;
  private final List<PinnedBar> pins;
  private final double[] from;
  private final double[] to;

  private PinCurve(TempoMap written, List<PinnedBar> pins) {
    this.written = written;
    this.pins = pins;
    this.from = pins.stream().mapToDouble(this::writtenSeconds).toArray();
    this.to = pins.stream().mapToDouble(pin -> pin.at().toDouble()).toArray();
  }

  static PinCurve through(TempoMap written, List<PinnedBar> pins) {
    return new PinCurve(written, pins);
  }

  private double writtenSeconds(PinnedBar pin) {
    return written.secondsAt(pin.bar().startTick()).toDouble();
  }

  private double slope(int first, int last) {
    return (to[last] - to[first]) / (from[last] - from[first]);
  }

  /** Whether the tempo drifts on through a pin. */
  private boolean drifts(int pin) {
    if (pin == 0 || pin == from.length - 1) {
      return false;
    }
    double change = slope(pin, pin + 1) / slope(pin - 1, pin);
    return change < BREAK && change > 1 / BREAK;
  }

  /**
   * The slope at one end of the stretch between two pins: across the pin where the tempo drifts on,
   * else of a parabola with the slope at the other end, if the tempo drifts on there.
   */
  private double slopeAt(int pin, int other) {
    if (drifts(pin)) {
      return slope(pin - 1, pin + 1);
    }
    double straight = slope(Math.min(pin, other), Math.max(pin, other));
    return drifts(other) ? 2 * straight - slope(other - 1, other + 1) : straight;
  }

  /** Whether the tempo drifts on through neither of two pins, so that one factor holds between. */
  boolean isStraight(int section) {
    return !drifts(section - 1) && !drifts(section);
  }

  /** Adds a tempo for every beat from one pin to the next; the times at both are exact. */
  void addSection(int section, List<TempoMap.Change> changes) {
    long first = pins.get(section - 1).bar().startTick();
    long last = pins.get(section).bar().startTick();
    TreeSet<Long> ticks = new TreeSet<>(List.of(first, last));
    for (long tick = first; tick < last; tick += written.ticksPerQuarter()) {
      ticks.add(tick);
    }
    written.stretches().stream()
        .map(TempoMap.Stretch::startTick)
        .filter(tick -> tick > first && tick < last)
        .forEach(ticks::add);
    long tick = first;
    Seconds time = pins.get(section - 1).at();
    for (long next : ticks.tailSet(first, false)) {
      Seconds end = next == last ? pins.get(section).at() : at(section, next);
      Seconds perQuarter =
          end.minus(time).times(BigFraction.of(written.ticksPerQuarter(), next - tick));
      changes.add(new TempoMap.Change(tick, perQuarter));
      tick = next;
      time = end;
    }
  }

  private Seconds at(int section, long tick) {
    double width = from[section] - from[section - 1];
    double begins = width * slopeAt(section - 1, section);
    double ends = width * slopeAt(section, section - 1);
    double x = (written.secondsAt(tick).toDouble() - from[section - 1]) / width;
    double rest = 1 - x;
    double value =
        to[section - 1] * (1 + 2 * x) * rest * rest
            + begins * x * rest * rest
            + to[section] * (1 + 2 * rest) * x * x
            - ends * rest * x * x;
    return Seconds.of(Math.round(value * NANOS), NANOS);
  }
}

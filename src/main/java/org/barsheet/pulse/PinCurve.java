package org.barsheet.pulse;

import java.util.List;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.PinnedTempo.PinnedBar;
import org.barsheet.score.TempoMap;

/**
 * A smooth curve from written time to pinned time that goes through three pins or more and never
 * turns back: monotone cubic interpolation (F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal.
 * 17, 1980).
 */
final class PinCurve {

  private static final long NANOS = 1_000_000_000;

  /** A slope no steeper than so many times either neighbor keeps the curve monotone. */
  private static final double STEEPEST = 3;

  private final TempoMap written;
  private final List<PinnedBar> pins;
  private final double[] from;
  private final double[] to;
  private final double[] slopes;

  private PinCurve(TempoMap written, List<PinnedBar> pins) {
    this.written = written;
    this.pins = pins;
    this.from = pins.stream().mapToDouble(this::writtenSeconds).toArray();
    this.to = pins.stream().mapToDouble(pin -> pin.at().toDouble()).toArray();
    this.slopes = slopes();
  }

  static PinCurve through(TempoMap written, List<PinnedBar> pins) {
    return new PinCurve(written, pins);
  }

  private double writtenSeconds(PinnedBar pin) {
    return written.secondsAt(pin.bar().startTick()).toDouble();
  }

  private double secant(int section) {
    return (to[section] - to[section - 1]) / (from[section] - from[section - 1]);
  }

  /** Slopes at the pins: of a parabola through three of them, within what stays monotone. */
  private double[] slopes() {
    int last = from.length - 1;
    double[] found = new double[from.length];
    for (int pin = 1; pin < last; pin++) {
      double before = secant(pin);
      double after = secant(pin + 1);
      double share = (from[pin] - from[pin - 1]) / (from[pin + 1] - from[pin - 1]);
      double slope = share * after + (1 - share) * before;
      found[pin] = Math.min(slope, STEEPEST * Math.min(before, after));
    }
    found[0] = endSlope(secant(1), found[1]);
    found[last] = endSlope(secant(last), found[last - 1]);
    return found;
  }

  /** The slope at an end of a parabola whose slope at the other end is known. */
  private static double endSlope(double secant, double other) {
    return Math.max(0, Math.min(STEEPEST * secant, 2 * secant - other));
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
    double x = (written.secondsAt(tick).toDouble() - from[section - 1]) / width;
    double rest = 1 - x;
    double value =
        to[section - 1] * (1 + 2 * x) * rest * rest
            + slopes[section - 1] * width * x * rest * rest
            + to[section] * (1 + 2 * rest) * x * x
            - slopes[section] * width * rest * x * x;
    return Seconds.of(Math.round(value * NANOS), NANOS);
  }
}

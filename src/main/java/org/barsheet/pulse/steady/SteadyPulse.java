package org.barsheet.pulse.steady;

import java.util.List;
import java.util.Optional;
import org.barsheet.pulse.evidence.GridConcentration;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.evidence.Playing.Stroke;
import org.barsheet.pulse.evidence.Spectrum;

/**
 * A steady pulse that all the music keeps to, as music written or played to a click does: a click
 * time and a phase that hold from the first stroke to the last.
 *
 * @param seconds from one pulse to the next
 * @param phase when one of the pulses sounds, in seconds
 * @param strength 0 (the strokes lie anywhere) to 1 (all on pulses)
 * @param spread how far from the pulse strokes are that are meant on it, in seconds
 */
public record SteadyPulse(double seconds, double phase, double strength, double spread) {

  /** A stroke is meant on a place it is this many spreads from, or this near in any case. */
  private static final double MEANT_SPREADS = 3;

  public static final double MEANT_SECONDS = 0.005;

  /** With less, no pulse is heard at all. */
  private static final double LEAST_STRENGTH = 0.3;

  /** A normal distribution's standard deviation in medians of what is off either way. */
  private static final double MEDIAN_SPREADS = 1.4826;

  private static final int ROUNDS = 8;

  /** Strokes farther than this from a pulse, in pulses, do not tell where it is. */
  private static final double TELLING = 0.25;

  private static final double WINDOW_SECONDS = 8;
  private static final int FEWEST_STROKES = 8;

  /** How far the strokes of a window may be off on average, in pulses and in seconds. */
  private static final double MOST_OFF = 0.15;

  private static final double MOST_SECONDS_OFF = 0.03;

  /** How much the strokes of a window gather on one place of the pulse, 0 to 1. */
  private static final double GATHERED = 0.5;

  private static final int MOST_DIVISIONS = 3;
  private static final double LEAST_STEADY = 0.9;

  /** Strokes that lie anywhere have a spread of 0.37 pulses. */
  private static final double MOST_SPREAD = 0.15;

  /** The pulse of the playing; nothing where it has none, or one that wanders. */
  public static Optional<SteadyPulse> of(Playing playing) {
    if (playing.strokes().size() < GridConcentration.FEWEST_ONSETS) {
      return Optional.empty();
    }
    Spectrum spectrum = Spectrum.of(playing.strokes());
    double hertz = spectrum.strongest();
    SteadyPulse pulse = new SteadyPulse(1 / hertz, 0, spectrum.strength(hertz), 0);
    if (pulse.strength < LEAST_STRENGTH) {
      return Optional.empty();
    }
    SteadyPulse fitted = pulse.fitted(playing);
    return fitted.isKeptBy(playing) ? Optional.of(fitted) : Optional.empty();
  }

  /** The same pulse where the strokes near it say it is (least squares, a few rounds). */
  private SteadyPulse fitted(Playing playing) {
    double length = seconds;
    double start = meanPhase(playing);
    for (int round = 0; round < ROUNDS; round++) {
      double n = 0;
      double sumK = 0;
      double sumT = 0;
      double sumKk = 0;
      double sumKt = 0;
      for (Stroke stroke : playing.strokes()) {
        double k = Math.rint((stroke.seconds() - start) / length);
        if (Math.abs((stroke.seconds() - start) / length - k) < TELLING) {
          n++;
          sumK += k;
          sumT += stroke.seconds();
          sumKk += k * k;
          sumKt += k * stroke.seconds();
        }
      }
      double spread = n * sumKk - sumK * sumK;
      if (spread > 0) {
        length = (n * sumKt - sumK * sumT) / spread;
        start = (sumT - length * sumK) / n;
      }
    }
    return new SteadyPulse(length, start, strength, spread(playing, length, start));
  }

  /** How far strokes are from their pulses: of the nearer half the farthest, in spreads. */
  private static double spread(Playing playing, double length, double start) {
    double[] off =
        playing.strokes().stream()
            .mapToDouble(stroke -> (stroke.seconds() - start) / length)
            .map(at -> Math.abs(at - Math.rint(at)) * length)
            .sorted()
            .toArray();
    return MEDIAN_SPREADS * off[off.length / 2];
  }

  /** How far from a place a stroke may be that is meant there, in seconds. */
  public double near() {
    return Math.max(MEANT_SECONDS, MEANT_SPREADS * spread);
  }

  private double meanPhase(Playing playing) {
    double x = 0;
    double y = 0;
    for (Stroke stroke : playing.strokes()) {
      double angle = 2 * Math.PI * stroke.seconds() / seconds;
      x += Math.cos(angle);
      y += Math.sin(angle);
    }
    return Math.atan2(y, x) / (2 * Math.PI) * seconds;
  }

  /** Whether the strokes of nearly every few seconds lie about the pulse or its divisions. */
  private boolean isKeptBy(Playing playing) {
    int windows = 0;
    int steady = 0;
    int from = 0;
    List<Stroke> strokes = playing.strokes();
    while (from < strokes.size()) {
      double end = strokes.get(from).seconds() + WINDOW_SECONDS;
      int to = from;
      while (to < strokes.size() && strokes.get(to).seconds() < end) {
        to++;
      }
      if (to - from >= FEWEST_STROKES) {
        windows++;
        steady += isSteady(strokes.subList(from, to)) ? 1 : 0;
      }
      from = to;
    }
    return spread < MOST_SPREAD * seconds && windows > 0 && steady >= LEAST_STEADY * windows;
  }

  private boolean isSteady(List<Stroke> strokes) {
    for (int division = 1; division <= MOST_DIVISIONS; division++) {
      double x = 0;
      double y = 0;
      for (Stroke stroke : strokes) {
        double angle = 2 * Math.PI * division * (stroke.seconds() - phase) / seconds;
        x += Math.cos(angle);
        y += Math.sin(angle);
      }
      double off = Math.abs(Math.atan2(y, x)) / (2 * Math.PI);
      boolean near = off < MOST_OFF && off * seconds / division < MOST_SECONDS_OFF;
      if (near && Math.hypot(x, y) >= GATHERED * strokes.size()) {
        return true;
      }
    }
    return false;
  }
}

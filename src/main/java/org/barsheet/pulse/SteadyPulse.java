package org.barsheet.pulse;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.Playing.Stroke;
import org.barsheet.score.Meter;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap.Stretch;

/**
 * A steady pulse that all the music keeps to while its written beat goes by unheard: played or
 * quantised to a click of its own, in a file left at the tempo that files have when none is set. A
 * click whose divisions are divisions of the written beat too (90 to the minute and its thirds in
 * 120) can go unnoticed.
 *
 * <p>How strongly a pulse is heard is the length of the mean of all strokes on its circle, weighted
 * with their strengths: 0 (spread evenly) to 1 (all on one place).
 *
 * @param beatsPerMinute of the pulse; the beat may be a few times faster or slower
 * @param strength of the pulse
 * @param writtenStrength of the written beat or its usual divisions, whichever is heard best
 */
record SteadyPulse(double beatsPerMinute, double strength, double writtenStrength) {

  /** Quarter notes last this long where a file sets no tempo (Standard MIDI File 1.0). */
  private static final Seconds UNSET_QUARTER = Seconds.of(1, 2);

  /** With these bounds none of 41 written scores is doubted, and 355 of 410 at other tempos are. */
  private static final double LEAST_STRENGTH = 0.3;

  /** How much stronger than the written beat and its divisions. */
  private static final double LEAST_TIMES = 2;

  private static final double SLOWEST_HERTZ = 0.7;
  private static final double FASTEST_HERTZ = 10;
  private static final double STEPS_IN_PEAK = 4;

  /** Pulses this near a multiple of the written beat are its own, in widths of a peak. */
  private static final double OWN_WIDTHS = 3;

  /**
   * And this share of it: where a free passage interrupts strict bars, their peak breaks in pieces.
   * A tempo so near the written one shares no divisions with it, which the onsets' ticks show.
   */
  private static final double OWN_SHARE = 0.05;

  /** Beyond this many seconds the music is taken to go on in the same way. */
  private static final double LONGEST_SECONDS = 300;

  private static final double[] SIMPLE_LEVELS = {1, 2, 4, 8};
  private static final double[] COMPOUND_LEVELS = {1, 3, 6, 12};

  /** Pulses that belong to the written beat: its multiples and usual divisions. */
  private static final double[] OWN_LEVELS = {0.25, 1 / 3.0, 0.5, 1, 2, 3, 4, 6, 8, 12};

  /** The pulse that contradicts a tempo that was perhaps never set; nothing where none does. */
  static Optional<SteadyPulse> against(Score score) {
    if (!isTempoUnset(score)) {
      return Optional.empty();
    }
    Playing playing = Playing.of(score);
    Meter meter = meter(score);
    double hertz = 1 / beatSeconds(meter);
    Spectrum spectrum = Spectrum.of(playing.strokes(), StrokeStrength.ofBeats(playing));
    double written =
        Arrays.stream(meter.isCompound() ? COMPOUND_LEVELS : SIMPLE_LEVELS)
            .map(level -> level * hertz)
            .filter(pulse -> pulse <= FASTEST_HERTZ)
            .map(spectrum::strength)
            .max()
            .orElseThrow();
    SteadyPulse best = spectrum.strongestBeside(hertz, written);
    boolean contradicts = best.strength > LEAST_STRENGTH && best.strength > LEAST_TIMES * written;
    return contradicts ? Optional.of(best) : Optional.empty();
  }

  private static boolean isTempoUnset(Score score) {
    List<Stretch> stretches = score.tempo().stretches();
    return stretches.stream().allMatch(one -> one.perQuarter().equals(UNSET_QUARTER));
  }

  /** Of the second bar; the first may be a pickup. */
  private static Meter meter(Score score) {
    return score.bars().bars().get(Math.min(1, score.bars().bars().size() - 1)).meter();
  }

  private static double beatSeconds(Meter meter) {
    double quarters = 4.0 / meter.denominator() * (meter.isCompound() ? 3 : 1);
    return UNSET_QUARTER.toDouble() * quarters;
  }

  /** Strokes as weights at times from the first one on. */
  @SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
  private record Spectrum(double[] seconds, double[] weights) {

    static Spectrum of(List<Stroke> strokes, double[] strengths) {
      double start = strokes.get(0).seconds();
      int count =
          (int)
              strokes.stream()
                  .takeWhile(stroke -> stroke.seconds() - start <= LONGEST_SECONDS)
                  .count();
      double[] seconds = new double[count];
      double[] weights = new double[count];
      double sum = 0;
      for (int i = 0; i < count; i++) {
        seconds[i] = strokes.get(i).seconds() - start;
        sum += strengths[i];
      }
      for (int i = 0; i < count; i++) {
        weights[i] = strengths[i] / sum;
      }
      return new Spectrum(seconds, weights);
    }

    double strength(double hertz) {
      double x = 0;
      double y = 0;
      for (int i = 0; i < seconds.length; i++) {
        x += weights[i] * Math.cos(2 * Math.PI * hertz * seconds[i]);
        y += weights[i] * Math.sin(2 * Math.PI * hertz * seconds[i]);
      }
      return Math.hypot(x, y);
    }

    /** Turns every stroke on by one step at a time, so that no circle is measured anew. */
    SteadyPulse strongestBeside(double ownHertz, double ownStrength) {
      double peak = 1 / Math.max(1, seconds[seconds.length - 1]);
      double step = peak / STEPS_IN_PEAK;
      double[] x = new double[seconds.length];
      double[] y = new double[seconds.length];
      double[] turnX = new double[seconds.length];
      double[] turnY = new double[seconds.length];
      for (int i = 0; i < seconds.length; i++) {
        x[i] = weights[i] * Math.cos(2 * Math.PI * SLOWEST_HERTZ * seconds[i]);
        y[i] = weights[i] * Math.sin(2 * Math.PI * SLOWEST_HERTZ * seconds[i]);
        turnX[i] = Math.cos(2 * Math.PI * step * seconds[i]);
        turnY[i] = Math.sin(2 * Math.PI * step * seconds[i]);
      }
      SteadyPulse best = new SteadyPulse(0, 0, ownStrength);
      for (int k = 0; SLOWEST_HERTZ + k * step <= FASTEST_HERTZ; k++) {
        double hertz = SLOWEST_HERTZ + k * step;
        double sumX = 0;
        double sumY = 0;
        for (int i = 0; i < x.length; i++) {
          sumX += x[i];
          sumY += y[i];
          double turned = x[i] * turnX[i] - y[i] * turnY[i];
          y[i] = x[i] * turnY[i] + y[i] * turnX[i];
          x[i] = turned;
        }
        double strength = Math.hypot(sumX, sumY);
        if (strength > best.strength && !isOwn(hertz, ownHertz, OWN_WIDTHS * peak)) {
          best = new SteadyPulse(60 * hertz, strength, ownStrength);
        }
      }
      return best;
    }

    private static boolean isOwn(double hertz, double ownHertz, double width) {
      for (double level : OWN_LEVELS) {
        if (Math.abs(hertz - level * ownHertz) < width + OWN_SHARE * level * ownHertz) {
          return true;
        }
      }
      return false;
    }
  }
}

package org.barsheet.pulse.free;

import java.util.Arrays;
import java.util.List;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.evidence.Playing.Stroke;

/**
 * Where within a beat notes are expected to begin: a density over the beat, from 0 (on it) to 1 (on
 * the next one).
 */
public final class BeatDivision {

  private static final int STEPS = 512;
  private static final double SPREAD = 0.035;
  private static final double LEARNT_SPREAD = 0.02;

  /** How much a density learnt from the playing counts against the general one. */
  private static final double LEARNT_SHARE = 0.4;

  /** A stroke this near a beat, in beats, divides nothing. */
  private static final double ON_BEAT = 0.1;

  /** Least share of the divided beats; measured 0.66 to 0.88 in 12/8, at most 0.45 in duple. */
  private static final double SHARE_INTO_THREE = 0.6;

  /** Shares: anywhere, on the beat, half, each quarter, each third. */
  private static final double[] OPEN = {0.10, 0.40, 0.20, 0.08, 0.07};

  private static final double[] DUPLE = {0.10, 0.40, 0.22, 0.10, 0.03};
  private static final double[] TRIPLE = {0.10, 0.40, 0.06, 0.02, 0.18};

  private final double[] logDensity;

  private BeatDivision(double[] density) {
    logDensity = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      logDensity[i] = StrictMath.log(density[i]);
    }
  }

  /** Beats that may be divided into two, three or four. */
  public static BeatDivision open() {
    return new BeatDivision(density(OPEN));
  }

  /** Beats divided into two and four. */
  public static BeatDivision duple() {
    return new BeatDivision(density(DUPLE));
  }

  /** Dotted beats, divided into three. */
  public static BeatDivision triple() {
    return new BeatDivision(density(TRIPLE));
  }

  /**
   * Whether most beats are divided into three and not into two and four, so that they are dotted
   * beats of a compound meter. Beats with nothing sounding inside say nothing.
   */
  public static boolean isIntoThree(Playing playing, List<Double> beats) {
    double[] leanings = new double[beats.size()];
    BeatDivision three = triple();
    BeatDivision two = duple();
    int beat = 0;
    for (Stroke stroke : playing.strokes()) {
      while (beat + 2 < beats.size() && beats.get(beat + 1) <= stroke.seconds()) {
        beat++;
      }
      double length = beats.get(beat + 1) - beats.get(beat);
      double phase = (stroke.seconds() - beats.get(beat)) / length;
      if (phase > ON_BEAT && phase < 1 - ON_BEAT) {
        leanings[beat] += three.logDensity(phase) - two.logDensity(phase);
      }
    }
    long intoThree = Arrays.stream(leanings).filter(leaning -> leaning > 0).count();
    long divided = Arrays.stream(leanings).filter(leaning -> leaning != 0).count();
    return intoThree > divided * SHARE_INTO_THREE;
  }

  private static double[] density(double[] shares) {
    double[] density = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double phase = (double) i / STEPS;
      density[i] =
          shares[0]
              + shares[1] * (bell(phase) + bell(phase - 1))
              + shares[2] * bell(phase - 0.5)
              + shares[3] * (bell(phase - 0.25) + bell(phase - 0.75))
              + shares[4] * (bell(phase - 1 / 3.0) + bell(phase - 2 / 3.0));
    }
    return density;
  }

  private static double bell(double distance) {
    double z = distance / SPREAD;
    return StrictMath.exp(-0.5 * z * z) / (SPREAD * Math.sqrt(2 * Math.PI));
  }

  /** Logarithm of the density at a phase from 0 to 1. */
  double logDensity(double phase) {
    return logDensity[(int) (STEPS * phase)];
  }

  /** This density mixed with the one that the playing shows between the given beats. */
  BeatDivision learntFrom(Playing playing, double[] strengths, List<Double> beats) {
    double[] seen = new double[STEPS];
    double sum = 0;
    int beat = 0;
    for (int i = 0; i < strengths.length; i++) {
      Stroke stroke = playing.strokes().get(i);
      while (beat + 2 < beats.size() && beats.get(beat + 1) <= stroke.seconds()) {
        beat++;
      }
      double length = beats.get(beat + 1) - beats.get(beat);
      double phase = (stroke.seconds() - beats.get(beat)) / length;
      if (phase >= 0 && phase < 1) {
        seen[(int) (phase * STEPS)] += strengths[i];
        sum += strengths[i];
      }
    }
    return sum == 0 ? this : mixedWith(seen, sum);
  }

  private BeatDivision mixedWith(double[] seen, double sum) {
    double[] kernel = new double[STEPS];
    double kernelSum = 0;
    for (int i = 0; i < STEPS; i++) {
      double z = Math.min(i, STEPS - i) / (LEARNT_SPREAD * STEPS);
      kernel[i] = StrictMath.exp(-0.5 * z * z);
      kernelSum += kernel[i];
    }
    double[] mixed = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double smooth = 0;
      for (int j = 0; j < STEPS; j++) {
        smooth += seen[(i + j) % STEPS] * kernel[j];
      }
      double learnt = smooth / kernelSum / sum * STEPS;
      mixed[i] = LEARNT_SHARE * learnt + (1 - LEARNT_SHARE) * StrictMath.exp(logDensity[i]);
    }
    return new BeatDivision(mixed);
  }
}

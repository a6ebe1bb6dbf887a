package org.barsheet.pulse.evidence;

import java.util.List;
import org.barsheet.pulse.evidence.Playing.Stroke;

/**
 * How strongly steady pulses are heard: the length of the mean of all strokes on the circle of a
 * pulse, 0 (spread evenly) to 1 (all on one place), each stroke weighted by how many notes it has.
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
public record Spectrum(double[] seconds, double[] weights) {

  private static final double SLOWEST_HERTZ = 0.7;
  private static final double FASTEST_HERTZ = 10;
  private static final double STEPS_IN_PEAK = 4;
  private static final double SHORTEST_SECONDS = 20;

  /** Beyond this many seconds the music is taken to go on in the same way. */
  private static final double LONGEST_SECONDS = 300;

  /** The strokes of the first five minutes at times from the first one on. */
  public static Spectrum of(List<Stroke> strokes) {
    double start = strokes.get(0).seconds();
    List<Stroke> first =
        strokes.stream().takeWhile(one -> one.seconds() - start <= LONGEST_SECONDS).toList();
    double sum = first.stream().mapToDouble(Spectrum::weight).sum();
    return new Spectrum(
        first.stream().mapToDouble(stroke -> stroke.seconds() - start).toArray(),
        first.stream().mapToDouble(stroke -> weight(stroke) / sum).toArray());
  }

  private static double weight(Stroke stroke) {
    return Math.log(1 + stroke.notes());
  }

  /** How strongly a pulse is heard. */
  public double strength(double hertz) {
    double x = 0;
    double y = 0;
    for (int i = 0; i < seconds.length; i++) {
      x += weights[i] * Math.cos(2 * Math.PI * hertz * seconds[i]);
      y += weights[i] * Math.sin(2 * Math.PI * hertz * seconds[i]);
    }
    return Math.hypot(x, y);
  }

  /**
   * The pulse heard most strongly, in hertz. Every stroke is turned on by one step at a time, so
   * that no circle is measured anew.
   */
  public double strongest() {
    double length = Math.max(SHORTEST_SECONDS, seconds[seconds.length - 1]);
    double step = 1 / (STEPS_IN_PEAK * length);
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
    double best = SLOWEST_HERTZ;
    double most = 0;
    for (int k = 0; SLOWEST_HERTZ + k * step <= FASTEST_HERTZ; k++) {
      double sumX = 0;
      double sumY = 0;
      for (int i = 0; i < x.length; i++) {
        sumX += x[i];
        sumY += y[i];
        double turned = x[i] * turnX[i] - y[i] * turnY[i];
        y[i] = x[i] * turnY[i] + y[i] * turnX[i];
        x[i] = turned;
      }
      if (Math.hypot(sumX, sumY) > most) {
        most = Math.hypot(sumX, sumY);
        best = SLOWEST_HERTZ + k * step;
      }
    }
    return best;
  }
}

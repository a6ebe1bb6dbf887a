package org.barsheet.pulse.steady;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barsheet.pulse.evidence.MeterPattern;
import org.barsheet.pulse.steady.Slots.Strokes;

/** The ways to hear beats and bars on a steady pulse, the likeliest first. */
public final class SteadyReadings {

  private static final double SHORTEST_SLOT = 0.08;
  private static final double LONGEST_SLOT = 0.8;
  private static final double SHORTEST_BEAT = 0.24;
  private static final double LONGEST_BEAT = 1.7;

  /** Slots in pulses, numerator and denominator. */
  private static final int[][] SLOTS = {
    {1, 3}, {1, 2}, {1, 1}, {2, 1}, {5, 2}, {3, 1}, {4, 1}, {5, 1}, {6, 1}, {8, 1}
  };

  /**
   * A reading and how much it is to be preferred.
   *
   * @param preference the logarithm of odds
   */
  public record Ranked(SteadyReading reading, double preference) {

    /** The length of most of its beats. */
    public double beatSeconds() {
      return reading.beatLength();
    }
  }

  private SteadyReadings() {}

  /** All readings of a playing on its pulse. */
  public static List<Ranked> of(Strokes strokes, SteadyPulse pulse, List<MeterPattern> meters) {
    List<Ranked> ranked = new ArrayList<>();
    for (int[] slot : SLOTS) {
      double step = pulse.seconds() * slot[0] / slot[1];
      if (step >= SHORTEST_SLOT && step <= LONGEST_SLOT) {
        for (int pulses = 0; pulses < slot[0]; pulses++) {
          double phase = pulse.phase() + pulses * pulse.seconds();
          SteadyReading reading = SteadyReading.of(strokes, step, phase, meters);
          double beat = reading.beatLength();
          if (beat >= SHORTEST_BEAT && beat <= LONGEST_BEAT) {
            ranked.add(new Ranked(reading, reading.preference(beat)));
          }
        }
      }
    }
    ranked.sort(Comparator.comparingDouble(Ranked::preference).reversed());
    return ranked;
  }
}

package org.barsheet.pulse;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.Score;

/**
 * An invented piece played freely into a recorder that knows no tempo: bass on the first beat,
 * chords on the others, a melody of halves or thirds of the beat, a new chord every bar. Tempo
 * follows a smooth random curve, each note misses its time a little.
 */
final class PlayedPiece {

  private static final double TICKS_PER_SECOND = 960;
  private static final int[] ROOTS = {36, 41, 43, 36, 45, 38, 43, 36};
  private static final int[] MELODY = {72, 76, 74, 77, 79, 76, 74, 71, 72, 79, 77, 74};

  private final int beatsInBar;
  private final int division;
  private final int bars;
  private final double beatSeconds;
  private final Random random;
  private final double[] curve;
  private final double missSeconds;
  private final List<double[]> events = new ArrayList<>();

  /**
   * A piece.
   *
   * @param spread spread of the tempo curve, 0.03 for 3 %
   * @param missSeconds spread of the misses
   */
  PlayedPiece(
      int beatsInBar, int bars, double beatSeconds, double spread, double missSeconds, long seed) {
    this(beatsInBar, 2, bars, beatSeconds, spread, missSeconds, seed);
  }

  /** A piece whose beats are divided into two or three. */
  PlayedPiece(
      int beatsInBar,
      int division,
      int bars,
      double beatSeconds,
      double spread,
      double missSeconds,
      long seed) {
    this.beatsInBar = beatsInBar;
    this.division = division;
    this.bars = bars;
    this.beatSeconds = beatSeconds;
    this.missSeconds = missSeconds;
    this.random = new Random(seed);
    this.curve = curve(spread);
    compose();
  }

  /** Time of every division of a beat, by a tempo that wanders and comes back. */
  private double[] curve(double spread) {
    double[] times = new double[division * beatsInBar * bars + 3];
    double wander = 0;
    double now = 1;
    for (int i = 0; i < times.length; i++) {
      times[i] = now;
      wander = 0.9 * wander + Math.sqrt(1 - 0.81) * random.nextGaussian();
      now += beatSeconds / division * Math.exp(spread * wander);
    }
    return times;
  }

  private void compose() {
    for (int bar = 0; bar < bars; bar++) {
      int root = ROOTS[bar % ROOTS.length];
      add(bar, 0, root, division * beatsInBar, 84);
      for (int beat = 1; beat < beatsInBar; beat++) {
        for (int third : new int[] {12, 16, 19}) {
          add(bar, division * beat, root + third, 1, 56);
        }
      }
      for (int part = 0; part < division * beatsInBar; part++) {
        int step = (bar * 5 + part) % MELODY.length;
        if (part % division == 0 || (bar + part) % (division + 1) > 0) {
          add(bar, part, MELODY[step], 1, 70);
        }
      }
    }
  }

  private void add(int bar, int part, int pitch, int parts, int velocity) {
    int at = division * beatsInBar * bar + part;
    double on = curve[at] + missSeconds * random.nextGaussian();
    double off = Math.max(on + 0.05, curve[at + parts] - 0.02);
    events.add(new double[] {on, 0x90, pitch, velocity});
    events.add(new double[] {off, 0x80, pitch, 0});
  }

  /** The piece as a file at a constant 120 that means nothing. */
  Score record(Path folder) {
    events.sort(Comparator.comparingDouble(event -> event[0]));
    Track track = new Track();
    for (double[] event : events) {
      track.event(
          Math.round(event[0] * TICKS_PER_SECOND), (int) event[1], (int) event[2], (int) event[3]);
    }
    return Scores.read(MidiBytes.file().track(track), folder);
  }

  /** When every beat was meant to sound. */
  List<Double> beats() {
    return everySo(division);
  }

  /** When every bar was meant to begin. */
  List<Double> downbeats() {
    return everySo(division * beatsInBar);
  }

  private List<Double> everySo(int parts) {
    List<Double> times = new ArrayList<>();
    for (int i = 0; i < division * beatsInBar * bars; i += parts) {
      times.add(curve[i]);
    }
    return times;
  }
}

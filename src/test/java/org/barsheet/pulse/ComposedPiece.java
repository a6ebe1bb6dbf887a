package org.barsheet.pulse;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.barsheet.score.Meter;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.Score;

/**
 * An invented piece for a small orchestra: bass, a figure of chords, a tune in phrases of four bars
 * and a pad, in sections of any meters, with or without a pickup. It is saved as composers save
 * theirs: at another tempo, late, without time signatures, exactly or played in by hand.
 */
final class ComposedPiece {

  static final int TICKS = 480;
  private static final int[] ROOTS = {0, 5, 7, 9, 2, 4, 0, 7};
  private static final int[] BROKEN = {0, 7, 12, 16};
  private static final int[] SCALE = {0, 2, 4, 5, 7, 9, 11};

  private final Random random;
  private final List<double[]> notes = new ArrayList<>();
  private final List<Double> bars = new ArrayList<>();
  private final List<Double> beats = new ArrayList<>();
  private final List<Meter> meters = new ArrayList<>();
  private final int style;
  private final int home;
  private double now;

  /** A piece of sections, each of so many bars of a meter. */
  ComposedPiece(long seed, double pickupBeats, List<Meter> sections, int barsInSection) {
    this.random = new Random(seed);
    this.style = random.nextInt(3);
    this.home = 45 + random.nextInt(10);
    List<double[]> rhythm = rhythm(sections.get(0));
    pickup(pickupBeats, sections.get(0));
    int step = 7;
    for (Meter meter : sections) {
      rhythm = meter.equals(sections.get(0)) ? rhythm : rhythm(meter);
      for (int bar = 0; bar < barsInSection; bar++) {
        step = addBar(meter, bar, rhythm, step);
      }
    }
  }

  private static double beat(Meter meter) {
    return meter.feltBeatQuarters().doubleValue();
  }

  private void pickup(double pickupBeats, Meter meter) {
    double length = pickupBeats * beat(meter);
    for (double at = 0; at < length - 1e-9; at += beat(meter) / 2) {
      note(2, at, beat(meter) / 2, home + 24 + SCALE[4], 70);
    }
    for (double at = length - beat(meter); at > -1e-9; at -= beat(meter)) {
      beats.add(0, at);
    }
    now = length;
  }

  /** Where notes of the tune begin in two bars, and how long they are, in quarter notes. */
  private List<double[]> rhythm(Meter meter) {
    List<double[]> rhythm = new ArrayList<>();
    double beat = beat(meter);
    double length = meter.quarters().doubleValue();
    double at = 0;
    double[] values =
        meter.isCompound()
            ? new double[] {beat, beat * 2 / 3, beat / 3, beat / 3}
            : new double[] {beat, beat, beat / 2, beat / 2, beat * 1.5};
    while (at < length - 1e-9) {
      double value = Math.min(values[random.nextInt(values.length)], length - at);
      rhythm.add(new double[] {at, value});
      at += value;
    }
    return rhythm;
  }

  private int addBar(Meter meter, int bar, List<double[]> rhythm, int from) {
    double length = meter.quarters().doubleValue();
    double beat = beat(meter);
    int root = home + ROOTS[(bar + style) % ROOTS.length];
    bars.add(now);
    meters.add(meter);
    note(0, now, bar % 4 == 3 ? length / 2 : length * 0.9, root - 12, 84);
    figure(meter, root);
    int step = from;
    if (bar % 8 != 7) {
      for (double[] one : rhythm) {
        step = Math.max(4, Math.min(12, step + random.nextInt(5) - 2));
        int pitch = home + 12 + 12 * (step / 7) + SCALE[step % 7];
        note(2, now + one[0], one[1] * 0.9, pitch, one[0] == 0 ? 86 : 74);
      }
    } else {
      note(2, now, length * 0.9, home + 24, 80);
    }
    if (bar % 2 == 0) {
      note(3, now, 2 * length * 0.95, root + 19, 52);
    }
    for (double at = 0; at < length - 1e-9; at += beat) {
      beats.add(now + at);
    }
    now += length;
    return step;
  }

  /** Chords after the beat, broken chords, or chords on each beat. */
  private void figure(Meter meter, int root) {
    double beat = beat(meter);
    int parts = meter.isCompound() ? 3 : 2;
    double length = meter.quarters().doubleValue();
    int count = (int) Math.round(length / beat * parts);
    for (int part = 0; part < count; part++) {
      double at = now + part * beat / parts;
      boolean onBeat = part % parts == 0;
      if (style == 1) {
        note(1, at, beat / parts * 0.9, root + BROKEN[part % 4], 60);
      } else if (onBeat == (style == 2)) {
        for (int above : new int[] {4, 7, 12}) {
          note(1, at, beat / parts * 0.8, root + above, 58);
        }
      }
    }
  }

  private void note(int part, double at, double length, int pitch, int velocity) {
    notes.add(new double[] {part, at, at + length, pitch, velocity});
  }

  /** The time signatures of its sections as the file may hold them. */
  Track signatures(Track track) {
    for (int bar = 0; bar < meters.size(); bar++) {
      if (bar == 0 || !meters.get(bar).equals(meters.get(bar - 1))) {
        Meter meter = meters.get(bar);
        int power = Integer.numberOfTrailingZeros(meter.denominator());
        track.meter(Math.round(bars.get(bar) * TICKS), meter.numerator(), power);
      }
    }
    return track;
  }

  /**
   * The piece as a file.
   *
   * @param heading a track with what tempo and meters the file holds
   * @param ticks from quarter notes of the piece to ticks of the file
   * @param missTicks spread of each note's misses
   */
  Score save(Path folder, Track heading, DoubleUnaryOperator ticks, double missTicks) {
    MidiBytes file = MidiBytes.file().track(heading);
    Random misses = new Random(7);
    for (int part = 0; part < 4; part++) {
      List<long[]> events = new ArrayList<>();
      for (double[] note : notes) {
        if (note[0] == part) {
          double on = ticks.applyAsDouble(note[1]) + missTicks * misses.nextGaussian();
          double off = Math.max(on + 20, ticks.applyAsDouble(note[2]));
          events.add(new long[] {Math.max(0, Math.round(on)), 1, (long) note[3], (long) note[4]});
          events.add(new long[] {Math.max(1, Math.round(off)), 0, (long) note[3], 0});
        }
      }
      events.sort(Comparator.<long[]>comparingLong(e -> e[0]).thenComparingLong(e -> e[1]));
      Track track = new Track();
      int channel = part;
      events.forEach(
          e -> track.event(e[0], (e[1] == 1 ? 0x90 : 0x80) | channel, (int) e[2], (int) e[3]));
      file.track(track);
    }
    return Scores.read(file, folder);
  }

  /** Where its bars begin, in quarter notes. */
  List<Double> bars() {
    return bars;
  }

  /** Where its felt beats are, in quarter notes. */
  List<Double> beats() {
    return beats;
  }
}

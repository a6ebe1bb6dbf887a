package org.barsheet.pulse.evidence;

import java.util.List;
import org.barsheet.pulse.evidence.Playing.Stroke;

/**
 * How strongly each of known beats is heard as the first of a bar: many, long, loud and low notes
 * on it, another harmony than before. The weights were chosen on played files kept apart.
 */
public final class DownbeatStrength {

  private static final int NEIGHBORS = 8;
  private static final double NEAR_SECONDS = 0.07;
  private static final double NEAR_SHARE = 0.15;
  private static final double LONGEST_BEATS = 4;
  private static final int HIGHEST_COUNTED = 90;
  private static final double[] WEIGHTS = {0.25, 0.4, 0.3, 0.35, 0.75, 0.75, 0.2};

  private final List<Stroke> strokes;
  private final List<Double> beats;
  private final double[] notes;
  private final double[] longest;
  private final double[] loudest;
  private final double[] depth;
  private final double[] pedal;
  private final double[][] harmony;

  private DownbeatStrength(Playing playing, List<Double> beats) {
    this.strokes = playing.strokes();
    this.beats = beats;
    this.notes = new double[beats.size()];
    this.longest = new double[beats.size()];
    this.loudest = new double[beats.size()];
    this.depth = new double[beats.size()];
    this.pedal = new double[beats.size()];
    this.harmony = new double[beats.size()][12];
  }

  /**
   * Strength of each beat, about 0 on average.
   *
   * @param beats in order of time, at least two
   */
  public static double[] of(Playing playing, List<Double> beats) {
    DownbeatStrength strength = new DownbeatStrength(playing, beats);
    strength.describeAll();
    return strength.combine();
  }

  private void describeAll() {
    int from = 0;
    for (int i = 0; i < beats.size(); i++) {
      double near = Math.min(NEAR_SECONDS, length(i) * NEAR_SHARE);
      while (from < strokes.size() && strokes.get(from).seconds() < beats.get(i) - near) {
        from++;
      }
      describe(i, from, near);
    }
  }

  private double length(int beat) {
    int from = Math.min(beat, beats.size() - 2);
    return beats.get(from + 1) - beats.get(from);
  }

  private void describe(int beat, int from, double near) {
    double start = beats.get(beat);
    double length = length(beat);
    int count = 0;
    int lowest = Playing.NO_PITCH;
    for (int i = from; i < strokes.size(); i++) {
      Stroke stroke = strokes.get(i);
      if (stroke.seconds() >= start + length - near) {
        break;
      }
      if (stroke.seconds() < start + near) {
        count += stroke.notes();
        lowest = Math.min(lowest, stroke.lowest());
        double lasting = Math.min(LONGEST_BEATS, stroke.longestSeconds() / length);
        longest[beat] = Math.max(longest[beat], lasting);
        loudest[beat] = Math.max(loudest[beat], stroke.velocity());
        pedal[beat] = Math.max(pedal[beat], stroke.pedal());
      }
      Harmony.add(harmony[beat], stroke.chroma());
    }
    notes[beat] = Math.log(1 + count) / Math.log(2);
    depth[beat] = -Math.min(lowest, HIGHEST_COUNTED);
  }

  /** Change of harmony at each beat, between so many beats before it and from it on. */
  private double[] changes(int span) {
    double[] changes = new double[beats.size()];
    for (int beat = 0; beat < changes.length; beat++) {
      double[] before = new double[12];
      double[] after = new double[12];
      for (int i = 0; i < span; i++) {
        if (beat + i < changes.length) {
          Harmony.add(after, harmony[beat + i]);
        }
        if (beat - 1 - i >= 0) {
          Harmony.add(before, harmony[beat - 1 - i]);
        }
      }
      changes[beat] = Harmony.change(before, after);
    }
    return changes;
  }

  private double[] combine() {
    double[][] features = {notes, longest, loudest, depth, changes(1), changes(2), pedal};
    double[] strengths = new double[beats.size()];
    for (int i = 0; i < strengths.length; i++) {
      int from = Math.max(0, i - NEIGHBORS);
      int to = Math.min(strengths.length, i + NEIGHBORS + 1);
      for (int feature = 0; feature < features.length; feature++) {
        strengths[i] += WEIGHTS[feature] * Standing.of(features[feature], i, from, to);
      }
    }
    return strengths;
  }
}

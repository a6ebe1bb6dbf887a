package org.barsheet.pulse.free;

import java.util.Arrays;
import java.util.List;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.evidence.Playing.Stroke;

/**
 * How well a beat fits at every search frame with every length of the beat before it: a stroke on
 * it, strokes at its divisions, a likely length; and how well a bar begins there.
 */
public final class BeatFit {

  private static final double STROKE_WEIGHT = 1.5;
  private static final double BEAT_COST = 2;
  private static final double DIVISION_WEIGHT = 0.25;
  private static final double LENGTH_WEIGHT = 0.3;
  private static final double BAR_WEIGHT = 0.4;
  private static final double SMEAR_SECONDS = 0.022;
  private static final int SMEAR_FRAMES = 4;
  private static final int BAR_FRAMES = 2;
  private static final double NO_STROKE = -0.3;
  private static final int FRAMES_AFTER = 30;

  private final BeatLengths lengths;
  private final int frames;
  private final float[] fits;
  private final double[] bars;

  BeatFit(
      Playing playing,
      double[] beatStrengths,
      double[] barStrengths,
      BeatLengths lengths,
      BeatDivision division) {
    this.lengths = lengths;
    this.frames = frame(playing.endSeconds()) + FRAMES_AFTER;
    this.bars = bars(playing.strokes(), barStrengths);
    double[] strokes = smear(playing.strokes(), beatStrengths);
    this.fits = new float[frames * BeatLengths.COUNT];
    fill(playing.strokes(), beatStrengths, strokes, division);
  }

  public static int frame(double seconds) {
    return (int) Math.round(seconds / BeatLengths.FRAME_SECONDS);
  }

  public static double seconds(int frame) {
    return frame * BeatLengths.FRAME_SECONDS;
  }

  private double[] smear(List<Stroke> strokes, double[] strengths) {
    double[] smeared = new double[frames];
    for (int i = 0; i < strengths.length; i++) {
      double onset = strokes.get(i).seconds();
      int center = frame(onset);
      for (int t = Math.max(0, center - SMEAR_FRAMES); t <= center + SMEAR_FRAMES; t++) {
        double z = (seconds(t) - onset) / SMEAR_SECONDS;
        smeared[t] += strengths[i] * Math.exp(-0.5 * z * z);
      }
    }
    return smeared;
  }

  private double[] bars(List<Stroke> strokes, double[] strengths) {
    double[] atFrame = new double[frames];
    double[] distance = new double[frames];
    Arrays.fill(atFrame, NO_STROKE);
    Arrays.fill(distance, Double.MAX_VALUE);
    for (int i = 0; i < strengths.length; i++) {
      int center = frame(strokes.get(i).seconds());
      for (int t = Math.max(0, center - BAR_FRAMES); t <= center + BAR_FRAMES; t++) {
        double away = Math.abs(seconds(t) - strokes.get(i).seconds());
        if (away < distance[t]) {
          distance[t] = away;
          atFrame[t] = strengths[i];
        }
      }
    }
    return atFrame;
  }

  private void fill(
      List<Stroke> strokes, double[] strengths, double[] smeared, BeatDivision division) {
    int after = 0;
    for (int t = 0; t < frames; t++) {
      while (after < strokes.size() && strokes.get(after).seconds() <= seconds(t)) {
        after++;
      }
      double stroke = STROKE_WEIGHT * smeared[t] - BEAT_COST;
      for (int length = lengths.first(); length <= lengths.last(); length++) {
        double divisions = divisions(strokes, strengths, after, seconds(t), length, division);
        double likely = lengths.preference(length) * BeatLengths.seconds(length);
        fits[t * BeatLengths.COUNT + length] =
            (float) (stroke + DIVISION_WEIGHT * divisions + LENGTH_WEIGHT * likely);
      }
    }
  }

  private static double divisions(
      List<Stroke> strokes,
      double[] strengths,
      int after,
      double now,
      int length,
      BeatDivision division) {
    double seconds = BeatLengths.seconds(length);
    double sum = 0;
    for (int i = after - 1; i >= 0; i--) {
      double back = now - strokes.get(i).seconds();
      if (back >= seconds) {
        break;
      }
      sum += strengths[i] * division.logDensity(1 - back / seconds);
    }
    return sum;
  }

  int frames() {
    return frames;
  }

  BeatLengths lengths() {
    return lengths;
  }

  /** Fit of a beat at a frame that ends a beat of a length. */
  float beat(int frame, int length) {
    return fits[frame * BeatLengths.COUNT + length];
  }

  /** Fit of a place in a bar at a frame, 0 on average over a bar. */
  double place(int frame, int place, int beatsInBar) {
    double share = 1.0 / beatsInBar;
    return BAR_WEIGHT * bars[frame] * (place == 0 ? 1 - share : -share);
  }
}

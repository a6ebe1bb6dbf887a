package org.barsheet.follow;

import java.util.Arrays;
import java.util.List;
import org.barsheet.recording.PitchRises;
import org.barsheet.score.Score;

/**
 * Finds every onset of a score near where it is expected, by the rise of the pitches that begin: of
 * all parts together, each with its own lag ({@link PartLags}), along a line that is as straight as
 * the playing lets it be ({@link OnsetLine}, {@link LocalLine}). How straight is tried out: the
 * straightest line on which nearly as much is heard as on the loosest one.
 */
final class OnsetRefiner {

  /** Chosen, as all numbers here, on renderings of six arrangements and five performances. */
  private static final double[] STIFFNESS = {0.25, 0.5, 1};

  private static final double NEARLY = 0.78;
  private static final double EXPECTED_SECONDS = 1.5;
  private static final double WALK = 0.02;
  private static final int ROUNDS = 3;

  /** Seconds on each side over which confidence is a mean. */
  private static final double LOCAL_SECONDS = 1.5;

  /** Two lines this far apart make each other half as sure, in seconds. */
  private static final double APART = 0.04;

  private final List<ScoreOnset> onsets;
  private final NoteRises rises;
  private final PartLags parts;
  private final int[] segments;

  /**
   * A refiner.
   *
   * @param segments which run of onsets each belongs to, between places where score and recording
   *     differ
   */
  OnsetRefiner(Score score, List<ScoreOnset> onsets, PitchRises rises, int[] segments) {
    this.onsets = onsets;
    this.rises = new NoteRises(score, rises);
    this.parts = new PartLags(score, this.rises);
    this.segments = segments;
  }

  /** Seconds of each onset with their confidence, 0 to 1, in place of how clear it is. */
  OnsetLine refine(double[] expected) {
    OnsetLine loosest = refine(expected, STIFFNESS[0]);
    OnsetLine chosen = loosest;
    OnsetLine other = refine(expected, STIFFNESS[1]);
    for (int i = 1; i < STIFFNESS.length; i++) {
      OnsetLine stiffer = i == 1 ? other : refine(expected, STIFFNESS[i]);
      if (mean(stiffer.clarity()) > NEARLY * mean(loosest.clarity())) {
        other = chosen;
        chosen = stiffer;
      }
    }
    return new OnsetLine(chosen.seconds(), confidence(chosen, other));
  }

  private OnsetLine refine(double[] expected, double stiffness) {
    double[] even = new double[expected.length];
    Arrays.fill(even, 1);
    double[] lags = parts.known();
    double[] near =
        new LocalLine(onsets, expected, even, segments).smoothed(EXPECTED_SECONDS * stiffness);
    OnsetLine line = line(lags, near, stiffness);
    for (int round = 1; round < ROUNDS; round++) {
      lags = parts.heard(onsets, line.seconds());
      line = line(lags, smoothed(line, stiffness), stiffness);
    }
    lags = parts.heard(onsets, line.seconds());
    double[] seconds = smoothed(line, stiffness * stiffness);
    return new OnsetLine(seconds, heard(seconds, lags));
  }

  private OnsetLine line(double[] lags, double[] near, double stiffness) {
    return OnsetLine.of(onsets, rises, lags, near, segments, WALK / stiffness);
  }

  private double[] smoothed(OnsetLine line, double width) {
    double[] weights = line.clarity().clone();
    Arrays.setAll(weights, i -> weights[i] * weights[i] + 1e-3);
    return new LocalLine(onsets, line.seconds(), weights, segments).smoothed(width);
  }

  private double[] heard(double[] seconds, double[] lags) {
    double[] heard = new double[seconds.length];
    Arrays.setAll(heard, i -> rises.near(onsets.get(i), seconds[i], 0, lags)[0]);
    return heard;
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElse(0);
  }

  private double[] confidence(OnsetLine chosen, OnsetLine other) {
    double[] confidence = new double[chosen.seconds().length];
    int low = 0;
    for (int i = 0; i < confidence.length; i++) {
      double at = onsets.get(i).seconds();
      while (onsets.get(low).seconds() < at - 2 * LOCAL_SECONDS) {
        low++;
      }
      double sum = 0;
      double weight = 0;
      for (int k = low; k < confidence.length; k++) {
        double u = (onsets.get(k).seconds() - at) / LOCAL_SECONDS;
        if (u > 2) {
          break;
        }
        double near = StrictMath.exp(-u * u / 2);
        sum += near * chosen.clarity()[k];
        weight += near;
      }
      double apart = (chosen.seconds()[i] - other.seconds()[i]) / APART;
      confidence[i] = Math.min(1, sum / weight / (1 + apart * apart));
    }
    return confidence;
  }
}

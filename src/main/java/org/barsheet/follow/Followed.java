package org.barsheet.follow;

import java.util.Arrays;
import java.util.List;

/** When a score sounds in a recording. */
public final class Followed {

  private final double[] score;
  private final double[] recording;
  private final double[] confidence;
  private final int semitones;
  private final List<Difference> differences;

  /**
   * The times of some moments.
   *
   * @param score seconds of the score, rising
   * @param recording the recording's seconds for each
   * @param confidence 0 to 1 for each
   * @param semitones how much higher the recording sounds than the score
   */
  Followed(
      double[] score,
      double[] recording,
      double[] confidence,
      int semitones,
      List<Difference> differences) {
    this.score = score.clone();
    this.recording = recording.clone();
    this.confidence = confidence.clone();
    this.semitones = semitones;
    this.differences = List.copyOf(differences);
  }

  /** The recording's second for a second of the score; beyond the notes the tempo goes on. */
  public double secondsAt(double scoreSecond) {
    int last = score.length - 1;
    if (last == 0) {
      return recording[0] + scoreSecond - score[0];
    }
    int before = before(scoreSecond);
    if (scoreSecond < score[0]) {
      return beyond(scoreSecond, 0, Math.min(last, EDGE));
    }
    if (scoreSecond > score[last]) {
      return beyond(scoreSecond, last, Math.max(0, last - EDGE));
    }
    double part = (scoreSecond - score[before]) / (score[before + 1] - score[before]);
    return recording[before] + part * (recording[before + 1] - recording[before]);
  }

  /** Onsets at an edge from which the tempo is taken. */
  private static final int EDGE = 8;

  private double beyond(double scoreSecond, int edge, int inner) {
    double slope = (recording[edge] - recording[inner]) / (score[edge] - score[inner]);
    return recording[edge] + (scoreSecond - score[edge]) * slope;
  }

  private int before(double scoreSecond) {
    int found = Arrays.binarySearch(score, scoreSecond);
    int before = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(score.length - 2, before));
  }

  /** How sure that is, from 0, a guess, to 1; from 0.5 on it is to be trusted. */
  public double confidenceAt(double scoreSecond) {
    return score.length == 1
        ? confidence[0]
        : Math.min(confidence[before(scoreSecond)], confidence[before(scoreSecond) + 1]);
  }

  /** How many semitones higher the recording sounds than the score, −5 to 6. */
  public int semitones() {
    return semitones;
  }

  /** Where recording and score differ, in order. */
  public List<Difference> differences() {
    return differences;
  }
}

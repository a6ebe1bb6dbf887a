package org.barsheet.follow;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.barsheet.recording.Chromagram;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * Follows a written score through a played MIDI file: the two are warped onto each other as a score
 * and a recording are ({@link CoarseToFine}), then every note of an onset looks for a played one of
 * its pitch. Wrong, missing and added notes and chords that are spread count little among their
 * neighbors.
 */
public final class PlayedFollower {

  /** A played note is looked for this far from where it is expected, in seconds. */
  private static final double REACH = 0.35;

  /** Seconds on each side over which what is expected is a straight line. */
  private static final double EXPECTED_SECONDS = 0.6;

  /** An onset this far from its neighbors' line was played wrong, in seconds. */
  private static final double ASTRAY = 0.12;

  private static final int ROUNDS = 2;

  private final List<ScoreOnset> onsets;
  private final Map<Integer, TreeSet<Double>> played = new HashMap<>();
  private final int[] segments;

  private PlayedFollower(List<ScoreOnset> onsets, Score performance, int[] segments) {
    this.onsets = onsets;
    this.segments = segments;
    for (Note note : performance.notes()) {
      played
          .computeIfAbsent(note.pitch(), pitch -> new TreeSet<>())
          .add(performance.tempo().secondsAt(note.onTick()).toDouble());
    }
  }

  /**
   * Finds the times of all notes; seconds of the recording are those of the played file.
   *
   * @throws org.barsheet.input.InputException if the score has no notes with pitch, or another
   *     piece was played; its problem names no file
   */
  public static Followed follow(Score score, Score performance) {
    if (performance.notes().size() < 2) {
      throw RecordingFollower.nothing();
    }
    Chromagram heard = ScoreChroma.of(performance, 0);
    int shift = RecordingFollower.shift(score, heard);
    Score sounding = RecordingFollower.shifted(score, shift);
    double[] path = new CoarseToFine(ScoreChroma.of(sounding, 0), heard).path();
    List<Difference> differences = Difference.along(path);
    List<ScoreOnset> onsets = ScoreOnset.of(sounding);
    double[] expected = new double[onsets.size()];
    Arrays.setAll(expected, i -> RecordingFollower.at(path, onsets.get(i).seconds()));
    int[] segments = RecordingFollower.segments(onsets, differences);
    OnsetLine line = new PlayedFollower(onsets, performance, segments).line(expected);
    return RecordingFollower.followed(onsets, line, shift, differences);
  }

  private OnsetLine line(double[] expected) {
    double[] seconds = expected.clone();
    double[] found = new double[seconds.length];
    for (int round = 0; round < ROUNDS; round++) {
      double[] near = smoothed(seconds, found, round == 0);
      for (int i = 0; i < seconds.length; i++) {
        match(i, near[i], round == 0 ? REACH : 2 * ASTRAY, seconds, found);
      }
    }
    double[] line = smoothed(seconds, found, false);
    for (int i = 0; i < seconds.length; i++) {
      boolean right = found[i] > 0 && Math.abs(seconds[i] - line[i]) < ASTRAY;
      seconds[i] = right ? seconds[i] : line[i];
      found[i] = right ? found[i] : 0;
    }
    return new OnsetLine(rising(seconds), neighbors(found));
  }

  private double[] smoothed(double[] seconds, double[] found, boolean even) {
    double[] weights = found.clone();
    Arrays.setAll(weights, i -> even ? 1 : weights[i] + 1e-3);
    return new LocalLine(onsets, seconds, weights, segments).smoothed(EXPECTED_SECONDS);
  }

  /** The mean of the played notes that are an onset's, and how many of its notes were played. */
  private void match(int onset, double near, double reach, double[] seconds, double[] found) {
    double sum = 0;
    int count = 0;
    List<Note> notes = onsets.get(onset).notes();
    for (Note note : notes) {
      double nearest = nearest(note.pitch(), near);
      if (Math.abs(nearest - near) <= reach) {
        sum += nearest;
        count++;
      }
    }
    seconds[onset] = count == 0 ? near : sum / count;
    found[onset] = (double) count / notes.size();
  }

  private double nearest(int pitch, double near) {
    TreeSet<Double> times = played.getOrDefault(pitch, new TreeSet<>());
    Double before = times.floor(near);
    Double after = times.ceiling(near);
    if (before == null || after == null) {
      return before != null ? before : after != null ? after : Double.POSITIVE_INFINITY;
    }
    return near - before <= after - near ? before : after;
  }

  private static double[] rising(double[] seconds) {
    double[] rising = seconds.clone();
    for (int i = 1; i < rising.length; i++) {
      rising[i] = Math.max(rising[i], rising[i - 1] + 1e-4);
    }
    return rising;
  }

  /** How many of an onset's and its four neighbors' notes were found. */
  private static double[] neighbors(double[] found) {
    double[] mean = new double[found.length];
    for (int i = 0; i < mean.length; i++) {
      int from = Math.max(0, i - 2);
      int to = Math.min(mean.length, i + 3);
      mean[i] = Arrays.stream(found, from, to).average().orElse(0);
    }
    return mean;
  }
}

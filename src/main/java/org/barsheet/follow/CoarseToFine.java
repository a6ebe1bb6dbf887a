package org.barsheet.follow;

import java.util.Arrays;
import org.barsheet.recording.Chromagram;

/**
 * Warps a score onto a recording at 2, 10 and 50 frames a second, each within a band around the one
 * before (T. Prätzlich, J. Driedger, M. Müller, "Memory-restricted multiscale dynamic time
 * warping", ICASSP 2016).
 */
final class CoarseToFine {

  private static final int COARSE = 25;
  private static final int MIDDLE = 5;
  private static final double MIDDLE_BAND_SECONDS = 4;
  private static final double FINE_BAND_SECONDS = 1.5;

  /** Price of a frame of the recording in which the score isn't played. */
  private static final double OUTSIDE = 0.5;

  private static final double ONSET_WEIGHT = 1;

  private final Chromagram score;
  private final Chromagram recording;

  CoarseToFine(Chromagram score, Chromagram recording) {
    this.score = score;
    this.recording = recording;
  }

  /** Price of the coarsest path for each frame of the score. */
  static double coarseCost(Chromagram score, Chromagram recording) {
    return new CoarseToFine(score, recording).coarse().cost();
  }

  /** The recording's frame, at 50 a second, for each of the score's. */
  double[] path() {
    WarpingPath coarse = coarse();
    WarpingPath middle = finer(coarse.recordingFrames(), COARSE, MIDDLE, MIDDLE_BAND_SECONDS);
    return finer(middle.recordingFrames(), MIDDLE, 1, FINE_BAND_SECONDS).recordingFrames();
  }

  private WarpingPath coarse() {
    float[][] a = means(score.chroma(), COARSE);
    float[][] b = means(recording.chroma(), COARSE);
    int[] low = new int[a.length];
    int[] high = new int[a.length];
    Arrays.fill(high, b.length - 1);
    return WarpingPath.of(low, high, OUTSIDE, (i, j) -> apart(a[i], b[j]));
  }

  private WarpingPath finer(double[] path, int from, int to, double seconds) {
    float[][] a = means(score.chroma(), to);
    float[][] b = means(recording.chroma(), to);
    float[][] aOnsets = means(score.onsets(), to);
    float[][] bOnsets = means(recording.onsets(), to);
    int ratio = from / to;
    int reach = (int) (seconds * Chromagram.RATE / to);
    int[] low = new int[a.length];
    int[] high = new int[a.length];
    for (int i = 0; i < a.length; i++) {
      double place = (i + 0.5) / ratio - 0.5;
      int before = (int) Math.max(0, Math.min(path.length - 1, Math.floor(place)));
      int after = Math.min(path.length - 1, before + 1);
      double part = Math.max(0, Math.min(1, place - before));
      double middle = (path[before] * (1 - part) + path[after] * part + 0.5) * ratio - 0.5;
      low[i] = (int) Math.max(0, Math.min(b.length - 1, Math.round(middle) - reach));
      high[i] = (int) Math.max(low[i], Math.min(b.length - 1, Math.round(middle) + reach));
    }
    return WarpingPath.of(
        low,
        high,
        OUTSIDE,
        (i, j) -> apart(a[i], b[j]) + ONSET_WEIGHT * distance(aOnsets[i], bOnsets[j]));
  }

  private static float[][] means(float[][] rows, int count) {
    if (count == 1) {
      return rows;
    }
    float[][] means = new float[(rows.length + count - 1) / count][rows[0].length];
    for (int i = 0; i < rows.length; i++) {
      for (int k = 0; k < rows[i].length; k++) {
        means[i / count][k] += rows[i][k] / count;
      }
    }
    return means;
  }

  private static double apart(float[] a, float[] b) {
    float dot = 0;
    float aa = 1e-9f;
    float bb = 1e-9f;
    for (int k = 0; k < a.length; k++) {
      dot += a[k] * b[k];
      aa += a[k] * a[k];
      bb += b[k] * b[k];
    }
    return 1 - dot / Math.sqrt(aa * bb);
  }

  private static double distance(float[] a, float[] b) {
    float square = 0;
    for (int k = 0; k < a.length; k++) {
      square += (a[k] - b[k]) * (a[k] - b[k]);
    }
    return Math.sqrt(square);
  }
}

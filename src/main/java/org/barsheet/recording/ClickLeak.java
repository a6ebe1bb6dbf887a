package org.barsheet.recording;

import java.util.Arrays;
import java.util.Optional;

/**
 * The click that leaked from headphones into a recording: sudden energy at known times, click after
 * click, along one line of start and drift.
 *
 * @param start where the first sample lies in the other, in seconds
 * @param drift in millionths, as in {@link Placement}
 */
public record ClickLeak(double start, double drift) {

  /** A start found by it is right to so many milliseconds (measured: 1.0 at most). */
  public static final double WITHIN_MILLISECONDS = 3;

  /** How far from where it should be a click is looked for on each side. */
  private static final double AROUND_SECONDS = 0.03;

  private static final double STEP_SECONDS = 0.00025;

  /** Energy is told over so long. */
  private static final double WINDOW_SECONDS = 0.001;

  private static final double MOST_DRIFT = 300e-6;
  private static final double DRIFT_STEP = 5e-6;
  private static final int FEWEST_CLICKS = 24;

  /** One burst of noise says no more than a few clicks. */
  private static final float MOST = 6;

  /** Standard deviations of chance above which clicks are there, and over the next best place. */
  private static final double CLEAR = 8;

  private static final double CLEAR_OF_NEXT = 1.4;

  /** Places nearer than this are one. */
  private static final double APART_SECONDS = 0.004;

  /**
   * Finds clicks.
   *
   * @param clicks their seconds in the other, rising
   * @param place where the recording lies, to some hundredths of a second
   */
  public static Optional<ClickLeak> in(Sound clip, double[] clicks, ClosePlacement place) {
    return new Search(clip, clicks, place).find();
  }

  private static final class Search {
    private final Sound clip;
    private final double start;
    private final double slope;
    private final double middle;
    private final double[] at;
    private final float[][] rows;
    private final int reach = (int) Math.round(AROUND_SECONDS / STEP_SECONDS);

    Search(Sound clip, double[] clicks, ClosePlacement place) {
      this.clip = clip;
      this.start = place.start();
      this.middle = clip.seconds() / 2;
      this.slope = place.drift() / 1e6;
      this.at =
          Arrays.stream(clicks)
              .map(click -> (click - start) / (1 + slope))
              .filter(t -> t > 2 * AROUND_SECONDS && t < clip.seconds() - 2 * AROUND_SECONDS)
              .toArray();
      this.rows = new float[at.length][];
      for (int i = 0; i < at.length; i++) {
        rows[i] = row(at[i]);
      }
    }

    /** How suddenly energy comes, at every step around a moment; 1 in the mean. */
    private float[] row(double moment) {
      float[] row = new float[2 * reach + 1];
      double sum = 0;
      for (int i = 0; i < row.length; i++) {
        double t = moment + (i - reach) * STEP_SECONDS;
        double rise = energy(t) - energy(t - WINDOW_SECONDS);
        row[i] = (float) Math.max(0, rise);
        sum += row[i];
      }
      double mean = sum / row.length + 1e-12;
      for (int i = 0; i < row.length; i++) {
        row[i] = (float) Math.min(MOST, row[i] / mean);
      }
      return row;
    }

    /** Of what is left when slow movements are taken out, in the window after a moment. */
    private double energy(double from) {
      int first = (int) Math.round(from * clip.rate());
      int count = (int) Math.round(WINDOW_SECONDS * clip.rate());
      double sum = 0;
      for (int i = first; i < first + count; i++) {
        double bend = clip.at(i) - 2.0 * clip.at(i - 1) + clip.at(i - 2);
        sum += bend * bend;
      }
      return Math.sqrt(sum);
    }

    Optional<ClickLeak> find() {
      if (rows.length < FEWEST_CLICKS) {
        return Optional.empty();
      }
      double best = 0;
      double bestDrift = 0;
      int bestOffset = 0;
      double[] most = new double[2 * reach + 1];
      for (double drift = -MOST_DRIFT; drift <= MOST_DRIFT; drift += DRIFT_STEP) {
        for (int offset = -reach; offset <= reach; offset++) {
          double mean = mean(offset, drift);
          most[offset + reach] = Math.max(most[offset + reach], mean);
          if (mean > best) {
            best = mean;
            bestDrift = drift;
            bestOffset = offset;
          }
        }
      }
      double next = 1;
      int apart = (int) Math.round(APART_SECONDS / STEP_SECONDS);
      for (int i = 0; i < most.length; i++) {
        next = Math.abs(i - reach - bestOffset) > apart ? Math.max(next, most[i]) : next;
      }
      boolean clear = best - 1 > CLEAR * deviation() && best - 1 > CLEAR_OF_NEXT * (next - 1);
      return clear ? Optional.of(leak(bestOffset, bestDrift)) : Optional.empty();
    }

    /** How strong energy comes along a line: offset in the middle, and drift. */
    private double mean(int offset, double drift) {
      double sum = 0;
      for (int i = 0; i < rows.length; i++) {
        int place = reach + offset + (int) Math.round(drift * (at[i] - middle) / STEP_SECONDS);
        sum += place < 0 || place >= rows[i].length ? 1 : rows[i][place];
      }
      return sum / rows.length;
    }

    /** Of the mean of as many places taken by chance. */
    private double deviation() {
      double square = 0;
      long count = 0;
      for (float[] row : rows) {
        for (float value : row) {
          square += (value - 1) * (value - 1);
          count++;
        }
      }
      return Math.sqrt(square / count / rows.length);
    }

    /** A click that is later in the clip than expected means that the clip began earlier. */
    private ClickLeak leak(int offset, double drift) {
      double first = at[0];
      double last = at[at.length - 1];
      double lateFirst = offset * STEP_SECONDS + drift * (first - middle);
      double lateLast = offset * STEP_SECONDS + drift * (last - middle);
      double exact = (last - first) * (1 + slope) / (last + lateLast - first - lateFirst);
      double begins = start + first * (1 + slope) - exact * (first + lateFirst);
      return new ClickLeak(begins, (exact - 1) * 1e6);
    }
  }
}

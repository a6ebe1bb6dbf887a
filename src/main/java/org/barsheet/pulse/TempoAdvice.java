package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FramesPerBeat;
import org.barsheet.clock.Seconds;

/**
 * A tempo near the composer's whose bar lines fall on frames where a new photograph can begin.
 *
 * @param tempo frames and eighths from beat to beat
 * @param beatsPerMinute the same as musicians say it, exact
 * @param barsOnGrid bar lines on a frame where a photograph can begin
 * @param bars bar lines looked at
 */
public record TempoAdvice(
    FramesPerBeat tempo, BigFraction beatsPerMinute, int barsOnGrid, int bars) {

  /** How far from the composer's tempo advice goes, in percent. */
  public static final int WITHIN_PERCENT = 3;

  /** The piece that advice is asked for. */
  public record Piece(BigFraction beatsPerMinute, int beatsInBar, int bars) {
    public Piece {
      if (beatsPerMinute.signum() <= 0 || beatsInBar < 1 || bars < 1) {
        throw new IllegalArgumentException("advice is for a piece with a tempo and bars");
      }
    }
  }

  /**
   * Every tempo in eighths of a frame within three percent, those with most bar lines on the
   * photograph grid first, of equal ones the nearest to the composer's first.
   *
   * @param framesPerPhotograph 1 on ones, 2 on twos
   */
  public static List<TempoAdvice> near(Piece piece, FrameRate rate, int framesPerPhotograph) {
    BigFraction asked = piece.beatsPerMinute();
    BigFraction slowest = asked.multiply(100 - WITHIN_PERCENT).divide(100);
    BigFraction fastest = asked.multiply(100 + WITHIN_PERCENT).divide(100);
    List<TempoAdvice> advice = new ArrayList<>();
    long eighths = Math.max(1, shortest(fastest, rate));
    for (BigFraction bpm = at(eighths, rate); bpm.compareTo(slowest) >= 0; ) {
      if (bpm.compareTo(fastest) <= 0) {
        Seconds beat = new FramesPerBeat(eighths).beat(rate);
        int onGrid = onGrid(piece, beat, rate, framesPerPhotograph);
        advice.add(new TempoAdvice(new FramesPerBeat(eighths), bpm, onGrid, piece.bars()));
      }
      eighths++;
      bpm = at(eighths, rate);
    }
    advice.sort(
        Comparator.comparingInt(TempoAdvice::barsOnGrid)
            .reversed()
            .thenComparing(one -> one.beatsPerMinute().subtract(asked).abs())
            .thenComparing(TempoAdvice::beatsPerMinute));
    return advice;
  }

  private static BigFraction at(long eighths, FrameRate rate) {
    return new FramesPerBeat(eighths).beatsPerMinute(rate);
  }

  private static long shortest(BigFraction beatsPerMinute, FrameRate rate) {
    return rate.framesPerSecond().multiply(480).divide(beatsPerMinute).longValue();
  }

  /**
   * How many of the first bar lines fall on frames where a photograph can begin, the first one on
   * frame 0.
   */
  public static int onGrid(Piece piece, Seconds beat, FrameRate rate, int framesPerPhotograph) {
    int count = 0;
    for (int bar = 0; bar < piece.bars(); bar++) {
      long frame = rate.nearestFrame(beat.times((long) bar * piece.beatsInBar()));
      if (frame % framesPerPhotograph == 0) {
        count++;
      }
    }
    return count;
  }
}

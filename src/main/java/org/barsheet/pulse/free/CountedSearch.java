package org.barsheet.pulse.free;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.barsheet.pulse.free.FoundBeats.FoundBeat;

/**
 * An exact search for a known number of beats between two known times: between two pinned bars the
 * bar numbers say how many.
 */
public final class CountedSearch {

  /** Largest search in cells; a longer one spreads the beats by the notes between alone. */
  private static final long MOST_CELLS = 40_000_000;

  private static final double LEAST_SHARE = 0.5;
  private static final double MOST_SHARE = 2;
  private static final double WANDERING_SHARE = 0.25;
  private static final int LEAST_WANDERING = 100;
  private static final float UNREACHED = Float.NEGATIVE_INFINITY;

  private final BeatFit fit;
  private final int from;
  private final int to;
  private final int count;
  private final int beatsInBar;
  private final int shortest;
  private final int lengths;
  private final int wandering;

  /**
   * A search.
   *
   * @param from search frame of the first beat
   * @param to search frame of the beat after the last one
   * @param bars how many bars lie between
   */
  public CountedSearch(BeatFit fit, int from, int to, int bars, int beatsInBar) {
    this.fit = fit;
    this.from = from;
    this.to = to;
    this.count = bars * beatsInBar;
    this.beatsInBar = beatsInBar;
    double mean = (double) (to - from) / count;
    int most = BeatLengths.SHORTEST + BeatLengths.COUNT - 1;
    this.shortest = (int) Math.max(BeatLengths.SHORTEST, Math.floor(mean * LEAST_SHARE));
    int longest = (int) Math.min(most, Math.ceil(mean * MOST_SHARE));
    this.lengths = longest - shortest + 1;
    this.wandering = (int) Math.max(LEAST_WANDERING, (to - from) * WANDERING_SHARE);
  }

  /** The beats from the first pin on, the second pin left out. */
  public List<FoundBeat> search() {
    boolean possible = lengths > 0 && (long) count * shortest <= to - from;
    long cells = (long) count * (2L * wandering + 1) * Math.max(1, lengths);
    List<Integer> frames = possible && cells <= MOST_CELLS ? bestFrames() : List.of();
    List<FoundBeat> beats = new ArrayList<>();
    for (int beat = 0; beat < count; beat++) {
      double frame = frames.isEmpty() ? evenly(beat) : frames.get(beat);
      beats.add(new FoundBeat(frame * BeatLengths.FRAME_SECONDS, beat % beatsInBar));
    }
    return beats;
  }

  private double evenly(int beat) {
    return from + (double) (to - from) * beat / count;
  }

  /** First frame at which a beat is looked for. */
  private int earliest(int beat) {
    return (int) Math.round(evenly(beat)) - wandering;
  }

  private List<Integer> bestFrames() {
    int width = 2 * wandering + 1;
    byte[][] before = new byte[count + 1][width * lengths];
    float[] totals = new float[0];
    for (int beat = 1; beat <= count; beat++) {
      float[] next = new float[width * lengths];
      Arrays.fill(next, UNREACHED);
      for (int step = 0; step < width; step++) {
        int frame = earliest(beat) + step;
        if (frame > from && frame <= to && (beat < count || frame == to)) {
          reach(beat, frame, totals, next, before[beat]);
        }
      }
      totals = next;
    }
    return trace(totals, before);
  }

  private void reach(int beat, int frame, float[] totals, float[] next, byte[] before) {
    double place = fit.place(frame, beat % beatsInBar, beatsInBar);
    for (int i = 0; i < lengths; i++) {
      int previous = frame - (shortest + i);
      int cell = (frame - earliest(beat)) * lengths + i;
      int length = shortest + i - BeatLengths.SHORTEST;
      float best = beat == 1 && previous == from ? 0 : UNREACHED;
      int step = previous - earliest(beat - 1);
      float[] costs = fit.lengths().changeCosts(length);
      if (beat > 1 && step >= 0 && step <= 2 * wandering) {
        for (int j = 0; j < lengths; j++) {
          int other = shortest + j - BeatLengths.SHORTEST;
          float total = totals[step * lengths + j] - costs[other];
          if (total > best) {
            best = total;
            before[cell] = (byte) j;
          }
        }
      }
      next[cell] = (float) (best + fit.beat(frame, length) + place);
    }
  }

  private List<Integer> trace(float[] totals, byte[][] before) {
    int frame = to;
    int base = (to - earliest(count)) * lengths;
    int length = 0;
    for (int i = 1; i < lengths; i++) {
      if (totals[base + i] > totals[base + length]) {
        length = i;
      }
    }
    if (totals[base + length] == UNREACHED) {
      return List.of();
    }
    List<Integer> frames = new ArrayList<>();
    for (int beat = count; beat > 0; beat--) {
      int cell = (frame - earliest(beat)) * lengths + length;
      frame -= shortest + length;
      length = before[beat][cell];
      frames.add(frame);
    }
    Collections.reverse(frames);
    return frames;
  }
}

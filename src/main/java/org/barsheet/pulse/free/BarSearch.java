package org.barsheet.pulse.free;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barsheet.pulse.free.FoundBeats.FoundBeat;

/**
 * An exact search (dynamic programming) for the beats of bars of one size: over every search frame
 * a beat can stand on, every length of the beat before it, and every place in the bar. A bar may be
 * cut short, at a cost. Pinned frames are hard: a bar begins there and no beat passes over.
 *
 * <p>Totals are kept for as many frames as the search looks back; of all frames only the way back
 * is kept, a byte for every length and place.
 */
final class BarSearch {

  private static final float SHORT_BAR_COST = 8;
  private static final float UNREACHED = Float.NEGATIVE_INFINITY;
  private static final byte START = -1;

  /** Frames whose totals are kept, a power of two: more than the longest beat has. */
  private static final int KEPT_FRAMES = 128;

  private final BeatFit fit;
  private final BeatLengths lengths;
  private final int beatsInBar;
  private final int firstFrame;
  private final int lastFrame;

  /** The last pinned frame before each frame, or -1. */
  private final int[] pinBefore;

  private final boolean[] pinned;

  /** Best total of a beat at one of the last frames with a length, by place. */
  private final float[][] totals;

  private final byte[][] lengthBefore;

  /** Best total of whatever comes before the first beat of a bar, and at which place it is. */
  private final float[] barEnds;

  private final byte[] placeBefore;

  /**
   * A search.
   *
   * @param firstFrame where the first stroke sounds
   * @param lastFrame where the last stroke sounds
   * @param pins frames at which bars begin
   */
  BarSearch(BeatFit fit, int beatsInBar, int firstFrame, int lastFrame, List<Integer> pins) {
    this.fit = fit;
    this.lengths = fit.lengths();
    this.beatsInBar = beatsInBar;
    this.firstFrame = firstFrame;
    this.lastFrame = lastFrame;
    this.pinned = new boolean[fit.frames()];
    this.pinBefore = new int[fit.frames()];
    pins.forEach(pin -> pinned[pin] = true);
    int cells = fit.frames() * BeatLengths.COUNT;
    int kept = KEPT_FRAMES * BeatLengths.COUNT;
    this.totals = new float[beatsInBar][kept];
    this.lengthBefore = new byte[beatsInBar][cells];
    this.barEnds = beatsInBar == 1 ? totals[0] : new float[kept];
    this.placeBefore = new byte[cells];
  }

  /** The best beats of all. */
  FoundBeats search() {
    int last = -1;
    for (int frame = 0; frame < fit.frames(); frame++) {
      pinBefore[frame] = last;
      reach(frame);
      if (pinned[frame]) {
        last = frame;
      }
    }
    return trace(last);
  }

  private void reach(int frame) {
    boolean mayStart =
        pinBefore[frame] < 0 && seconds(frame - firstFrame) < BeatLengths.LONGEST_SECONDS;
    for (int length = lengths.first(); length <= lengths.last(); length++) {
      int cell = frame * BeatLengths.COUNT + length;
      int before = frame - BeatLengths.frames(length);
      boolean reachable = before >= 0 && before >= pinBefore[frame];
      for (int place = 0; place < beatsInBar; place++) {
        if (place > 0 && pinned[frame]) {
          totals[place][kept(frame, length)] = UNREACHED;
        } else {
          reach(frame, length, place, reachable ? before : -1, mayStart);
        }
      }
      closeBar(cell, kept(frame, length));
    }
  }

  private static int kept(int frame, int length) {
    return frame % KEPT_FRAMES * BeatLengths.COUNT + length;
  }

  private static double seconds(int frames) {
    return frames * BeatLengths.FRAME_SECONDS;
  }

  private void reach(int frame, int length, int place, int before, boolean mayStart) {
    float[] source = place == 0 ? barEnds : totals[place - 1];
    float best = mayStart ? 0 : UNREACHED;
    byte bestLength = START;
    if (before >= 0) {
      int base = kept(before, 0);
      int most = lengths.mostBefore(length);
      float[] costs = lengths.changeCosts(length);
      for (int other = lengths.leastBefore(length); other <= most; other++) {
        float total = source[base + other] - costs[other];
        if (total > best) {
          best = total;
          bestLength = (byte) other;
        }
      }
    }
    int cell = frame * BeatLengths.COUNT + length;
    double gain = fit.beat(frame, length);
    if (beatsInBar > 1) {
      gain += fit.place(frame, place, beatsInBar);
    }
    totals[place][kept(frame, length)] = (float) (best + gain);
    lengthBefore[place][cell] = bestLength;
  }

  private void closeBar(int cell, int kept) {
    if (beatsInBar == 1) {
      return;
    }
    float best = totals[beatsInBar - 1][kept];
    int bestPlace = beatsInBar - 1;
    for (int place = 0; place < beatsInBar - 1; place++) {
      float total = totals[place][kept] - SHORT_BAR_COST;
      if (total > best) {
        best = total;
        bestPlace = place;
      }
    }
    barEnds[kept] = best;
    placeBefore[cell] = (byte) bestPlace;
  }

  private FoundBeats trace(int lastPin) {
    int frame = 0;
    int length = 0;
    int place = 0;
    float total = UNREACHED;
    int from = Math.max(lastPin, lastFrame - BeatLengths.frames(BeatLengths.COUNT - 1) / 2);
    for (int t = Math.max(0, from); t < fit.frames(); t++) {
      for (int i = lengths.first(); i <= lengths.last(); i++) {
        for (int p = 0; p < beatsInBar; p++) {
          if (totals[p][kept(t, i)] > total) {
            total = totals[p][kept(t, i)];
            frame = t;
            length = i;
            place = p;
          }
        }
      }
    }
    return new FoundBeats(walkBack(frame, length, place), beatsInBar, total);
  }

  private List<FoundBeat> walkBack(int lastBeat, int lastLength, int lastPlace) {
    List<FoundBeat> beats = new ArrayList<>();
    int frame = lastBeat;
    int length = lastLength;
    int place = lastPlace;
    while (true) {
      beats.add(new FoundBeat(BeatFit.seconds(frame), place));
      byte before = lengthBefore[place][frame * BeatLengths.COUNT + length];
      if (before == START) {
        Collections.reverse(beats);
        return beats;
      }
      frame -= BeatLengths.frames(length);
      length = before;
      if (place == 0) {
        place = beatsInBar == 1 ? 0 : placeBefore[frame * BeatLengths.COUNT + length];
      } else {
        place--;
      }
    }
  }
}

package org.barsheet.timing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;

/**
 * One panel with the places it can take, ready for counting: what its shot costs if it begins at
 * one of them and ends before a frame.
 */
final class Stage {

  private final Panel panel;
  private final List<Candidate> candidates;
  private final LengthTable lengths;
  private final double weight;
  private final long[] cuts;
  private final long[] earliestEnds;
  private final long[] latestEnds;
  private final long[] roomyEnds;
  private final long[] roomyCosts;
  private final double[] wantedLogarithms;
  private final double leastWanted;
  private final double mostWanted;

  Stage(
      Panel panel,
      List<Candidate> candidates,
      Optional<FrameSpan> lock,
      LengthTable lengths,
      double meanLength) {
    this.panel = panel;
    this.candidates = candidates;
    this.lengths = lengths;
    int size = candidates.size();
    this.cuts = new long[size];
    this.earliestEnds = new long[size];
    this.latestEnds = new long[size];
    this.roomyEnds = new long[size];
    this.roomyCosts = new long[size];
    this.wantedLogarithms = new double[size];
    boolean wish = panel.length().filter(length -> !length.isRange()).isPresent();
    this.weight = wish ? Costs.LENGTH_ASKED : Costs.LENGTH_UNASKED;
    double mean = StrictMath.log(Math.max(1, meanLength));
    for (int i = 0; i < size; i++) {
      Candidate candidate = candidates.get(i);
      cuts[i] = candidate.cut();
      wantedLogarithms[i] = wish ? wantedLogarithm(candidate) : mean;
      setLimits(i, candidate, lock);
      setRooms(i, candidate);
    }
    this.leastWanted = Arrays.stream(wantedLogarithms).min().orElse(0);
    this.mostWanted = Arrays.stream(wantedLogarithms).max().orElse(0);
  }

  private double wantedLogarithm(Candidate candidate) {
    return lengths.logarithm(Math.max(1, askedFrames(candidate)));
  }

  private long askedFrames(Candidate candidate) {
    Length asked = panel.length().orElseThrow();
    long end = lengths.frameAfter(candidate.cutAt(), asked.unit(), asked.most());
    return end - candidate.cut();
  }

  /** The frames asked for a shot that begins there, where the plan asks for a length. */
  long askedFrames(int i) {
    return askedFrames(candidates.get(i));
  }

  private void setLimits(int i, Candidate candidate, Optional<FrameSpan> lock) {
    earliestEnds[i] = Math.max(candidate.cut(), candidate.anchor()) + 1;
    latestEnds[i] = Long.MAX_VALUE;
    if (lock.isPresent()) {
      earliestEnds[i] = Math.max(earliestEnds[i], lock.get().endExclusive());
      latestEnds[i] = lock.get().endExclusive();
    } else if (panel.length().isPresent() && panel.length().get().isRange()) {
      Length asked = panel.length().get();
      long least = lengths.frameAfter(candidate.cutAt(), asked.unit(), asked.least());
      earliestEnds[i] = Math.max(earliestEnds[i], least);
      latestEnds[i] = lengths.frameAfter(candidate.cutAt(), asked.unit(), asked.most());
    }
    if (candidate.cut() < 0 || candidate.anchor() < candidate.cut()) {
      latestEnds[i] = -1;
    }
  }

  private void setRooms(int i, Candidate candidate) {
    roomyEnds[i] = earliestEnds[i];
    for (RevealRoom room : candidate.rooms()) {
      Optional<Long> earliest = room.earliestEnd(candidate.cut());
      if (earliest.isEmpty()) {
        latestEnds[i] = -1;
        return;
      }
      earliestEnds[i] = Math.max(earliestEnds[i], earliest.get());
      for (PictureRun way : room.ways()) {
        roomyEnds[i] = Math.max(roomyEnds[i], room.endFrame(way));
      }
    }
    roomyCosts[i] = squeezeCost(candidate, Long.MAX_VALUE);
  }

  private static long squeezeCost(Candidate candidate, long end) {
    long cost = 0;
    for (RevealRoom room : candidate.rooms()) {
      PictureRun way = room.fit(candidate.cut(), end).orElseThrow();
      cost += Costs.squeeze(way, room.ways().get(0));
    }
    return cost;
  }

  Panel panel() {
    return panel;
  }

  int size() {
    return cuts.length;
  }

  Candidate candidate(int i) {
    return candidates.get(i);
  }

  long cut(int i) {
    return cuts[i];
  }

  /** The cost of choosing a place, whatever comes after. */
  long choiceCost(int i) {
    return candidates.get(i).cost();
  }

  /** The earliest frame a shot that begins there may end before. */
  long earliestEnd(int i) {
    return earliestEnds[i];
  }

  /** The latest frame a shot that begins there may end before; less than the earliest if none. */
  long latestEnd(int i) {
    return latestEnds[i];
  }

  /** The first place whose cut is at or after a frame. */
  int firstFrom(long frame) {
    int low = 0;
    int high = cuts.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (cuts[middle] < frame) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The end that a shot from a place would like best. */
  long wantedEnd(int i) {
    return cuts[i] + (long) StrictMath.exp(wantedLogarithms[i]);
  }

  /** What a shot of so many frames costs at least for its length, wherever it begins. */
  long leastLengthCost(long frames) {
    double log = lengths.logarithm(frames);
    double away = Math.max(0, Math.max(log - mostWanted, leastWanted - log));
    return (long) (weight * away * away * Costs.ONE);
  }

  /** The length that shots of this panel like best on the whole, in frames. */
  long wantedFrames() {
    return (long) StrictMath.exp((leastWanted + mostWanted) / 2);
  }

  /** Cost of a shot, length and squeezed reveals, or {@link Costs#IMPOSSIBLE}. */
  long shotCost(int i, long end) {
    if (end < earliestEnds[i] || end > latestEnds[i]) {
      return Costs.IMPOSSIBLE;
    }
    return lengthCost(i, end) + squeezeCost(i, end);
  }

  /** The part of a shot's cost that its length makes. */
  long lengthCost(int i, long end) {
    double away = lengths.logarithm(end - cuts[i]) - wantedLogarithms[i];
    return (long) (weight * away * away * Costs.ONE + 0.5);
  }

  /** The part of a shot's cost that squeezed reveals make. */
  long squeezeCost(int i, long end) {
    return end >= roomyEnds[i] ? roomyCosts[i] : squeezeCost(candidates.get(i), end);
  }
}

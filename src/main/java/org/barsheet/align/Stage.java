package org.barsheet.align;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.barsheet.clock.FrameSpan;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;

/**
 * One panel with the places it can take, ready for counting: what its shot costs if it begins at
 * one of them and ends before a frame.
 */
public final class Stage {

  private final int index;
  private final Panel panel;
  private final List<Candidate> candidates;
  private final SharedCues shared;
  private final List<Set<String>> carried;
  private final boolean holdsCues;
  private final Optional<FrameSpan> lock;
  private final LengthTable lengths;
  private final double meanLength;
  private final double weight;
  private final long[] cuts;
  private final long[] afterCuts;
  private final long[] cueFrames;
  private final long[] earliestEnds;
  private final long[] latestEnds;
  private final long[] roomyEnds;
  private final long[] roomyCosts;
  private final double[] wanted;
  private final long leastFrames;
  private final long mostFrames;
  private final long leastChoice;
  private final double leastWanted;
  private final double mostWanted;

  Stage(
      int index,
      Panel panel,
      List<Candidate> candidates,
      SharedCues shared,
      Optional<FrameSpan> lock,
      LengthTable lengths,
      double meanLength) {
    this.index = index;
    this.panel = panel;
    this.candidates = candidates;
    this.shared = shared;
    this.carried = candidates.stream().map(place -> shared.carried(index, place)).toList();
    this.holdsCues =
        carried.stream().anyMatch(cues -> !cues.isEmpty())
            || candidates.stream().anyMatch(place -> !place.held().isEmpty());
    this.lock = lock;
    this.lengths = lengths;
    this.meanLength = meanLength;
    int size = candidates.size();
    this.cuts = new long[size];
    this.afterCuts = new long[size];
    this.cueFrames = new long[size];
    this.earliestEnds = new long[size];
    this.latestEnds = new long[size];
    this.roomyEnds = new long[size];
    this.roomyCosts = new long[size];
    this.wanted = new double[size];
    boolean wish = panel.length().filter(length -> !length.isRange()).isPresent();
    this.weight = wish ? Costs.LENGTH_ASKED : Costs.LENGTH_UNASKED;
    double mean = Math.max(1, meanLength);
    for (int i = 0; i < size; i++) {
      Candidate candidate = candidates.get(i);
      cuts[i] = candidate.cut();
      afterCuts[i] = candidate.afterCut();
      cueFrames[i] = candidate.cue().frame();
      wanted[i] = wish ? Math.max(1, askedFrames(candidate)) : mean;
      setLimits(i, candidate);
      setRooms(i, candidate);
    }
    this.leastChoice =
        candidates.stream()
            .filter(place -> place.kind() != Candidate.Kind.FREE_ON_MARK)
            .mapToLong(Candidate::cost)
            .min()
            .orElse(0);
    this.leastFrames = reach(earliestEnds).min().orElse(1);
    this.mostFrames = reach(latestEnds).max().orElse(1);
    this.leastWanted = Arrays.stream(wanted).min().orElse(1);
    this.mostWanted = Arrays.stream(wanted).max().orElse(1);
  }

  private LongStream reach(long[] ends) {
    return IntStream.range(0, ends.length).mapToLong(i -> ends[i] - cuts[i]);
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

  private void setLimits(int i, Candidate candidate) {
    earliestEnds[i] = Math.max(candidate.cut(), candidate.anchor()) + 1;
    latestEnds[i] = Costs.IMPOSSIBLE;
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

  /** The panel with some of its places only. */
  Stage only(boolean[] kept) {
    List<Candidate> some =
        IntStream.range(0, kept.length).filter(i -> kept[i]).mapToObj(candidates::get).toList();
    return new Stage(index, panel, some, shared, lock, lengths, meanLength);
  }

  public Panel panel() {
    return panel;
  }

  public int size() {
    return cuts.length;
  }

  public Candidate candidate(int i) {
    return candidates.get(i);
  }

  /** Whether all its places begin on the same frame. */
  boolean hasOneCut() {
    return cuts.length > 0 && cuts[0] == cuts[cuts.length - 1];
  }

  public long cut(int i) {
    return cuts[i];
  }

  /**
   * Whether a place can follow a place of the panel before: it may hang on it, not share its cue.
   */
  boolean canFollow(int i, Stage before, int j) {
    if (afterCuts[i] != Candidate.ANY && afterCuts[i] != before.cuts[j]) {
      return false;
    }
    if (cueFrames[i] == before.cueFrames[j]
        && candidate(i).cue().id().equals(before.candidate(j).cue().id())) {
      return false;
    }
    return !(holdsCues || before.holdsCues) || holdsWhatIsLeft(i, before, j);
  }

  /** Whether no panel before holds its cue, and it is the one told apart by what they hold. */
  private boolean holdsWhatIsLeft(int i, Stage before, int j) {
    Set<String> held = candidate(i).held();
    Set<String> left = before.carried.get(j);
    if (before.candidate(j).held().contains(candidate(i).cue().id())) {
      return false;
    }
    return left.isEmpty() ? held.isEmpty() : held.equals(shared.stillHeld(index, cuts[i], left));
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
    return cuts[i] + (long) wanted[i];
  }

  /** The fewest frames a shot of this panel can have, wherever it begins. */
  long leastFrames() {
    return leastFrames;
  }

  /** The most frames a shot of this panel can have, wherever it begins. */
  long mostFrames() {
    return mostFrames;
  }

  /** What a shot of so many frames costs at least for its length, wherever it begins. */
  long leastLengthCost(long frames) {
    double nearest = Math.max(leastWanted, Math.min(mostWanted, (double) frames));
    return lengthCost(frames, nearest);
  }

  /**
   * The least that this panel's shot, its choice and its length, costs if each frame of it earns a
   * price. Marks, which few panels can share, count as bar lines.
   *
   * @param price in millionths a frame, of any sign
   */
  double leastAtPrice(double price, long filmFrames) {
    double scale = weight * Costs.ONE;
    double wish = price > 0 ? mostWanted : leastWanted;
    double slope = 1 - price * wish / scale;
    double frames = slope <= 0 ? filmFrames : wish / Math.sqrt(slope);
    double most = (double) Math.min(mostFrames, filmFrames);
    frames = Math.max((double) leastFrames, Math.min(most, frames));
    double nearest = Math.max(leastWanted, Math.min(mostWanted, frames));
    double share = frames / nearest;
    return leastChoice + scale * (share + 1 / share - 2) - price * frames - 1;
  }

  /** The length that shots of this panel like best on the whole, in frames. */
  long wantedFrames() {
    return (long) ((leastWanted + mostWanted) / 2);
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
    return lengthCost(end - cuts[i], wanted[i]);
  }

  private long lengthCost(long frames, double wantedFrames) {
    double share = frames / wantedFrames;
    return (long) (weight * (share + 1 / share - 2) * Costs.ONE + 0.5);
  }

  /** The part of a shot's cost that squeezed reveals make. */
  long squeezeCost(int i, long end) {
    return end >= roomyEnds[i] ? roomyCosts[i] : squeezeCost(candidates.get(i), end);
  }
}

package org.barsheet.align;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.LengthTable;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.clock.FrameSpan;
import org.barsheet.plan.Length;

/**
 * Places in order of cut, ready for counting: what a shot of a length costs that begins at one of
 * them and ends before a frame. Panels that ask the same share one.
 */
final class PlaceCosts {

  /** What rounding can make of a cost, in millionths. */
  private static final double ROUNDING = 2;

  /** Lengths whose costs are worked out beforehand, in lengths liked best. */
  private static final double MOST_KNOWN = 4;

  private final Candidate[] places;
  private final Optional<Length> asked;
  private final Optional<FrameSpan> lock;
  private final LengthTable lengths;
  private final boolean wish;
  private final double weight;
  private final boolean hangs;
  private final long[] cuts;
  private final long[] cueFrames;
  private final long[] earliestEnds;
  private final long[] latestEnds;
  private final long[] roomyEnds;
  private final long[] roomyCosts;
  private final double[] wanted;
  private final long leastFrames;
  private final long mostFrames;
  private final long leastSqueeze;
  private final double leastWanted;
  private final double mostWanted;
  private final double[] known;

  PlaceCosts(
      List<Candidate> places,
      Optional<Length> asked,
      Optional<FrameSpan> lock,
      LengthTable lengths,
      double meanLength) {
    this.places = places.toArray(Candidate[]::new);
    this.hangs = places.stream().anyMatch(place -> place.afterCut() != Candidate.ANY);
    this.asked = asked;
    this.lock = lock;
    this.lengths = lengths;
    this.wish = asked.filter(length -> !length.isRange()).isPresent();
    this.weight = weight(asked);
    this.cuts = places.stream().mapToLong(Candidate::cut).toArray();
    this.cueFrames = places.stream().mapToLong(place -> place.cue().frame()).toArray();
    int size = cuts.length;
    this.earliestEnds = new long[size];
    this.latestEnds = new long[size];
    this.wanted = new double[size];
    boolean rooms = places.stream().anyMatch(place -> !place.rooms().isEmpty());
    this.roomyEnds = rooms ? new long[size] : earliestEnds;
    this.roomyCosts = new long[rooms ? size : 0];
    double mean = Math.max(1, meanLength);
    for (int i = 0; i < size; i++) {
      wanted[i] = wish ? Math.max(1, askedFrames(i)) : mean;
      setLimits(i, this.places[i]);
      if (rooms) {
        setRooms(i, this.places[i]);
      }
    }
    this.leastFrames = reach(earliestEnds).min().orElse(1);
    this.mostFrames = reach(latestEnds).max().orElse(1);
    this.leastWanted = Arrays.stream(wanted).min().orElse(1);
    this.leastSqueeze = Arrays.stream(roomyCosts).min().orElse(0);
    this.mostWanted = Arrays.stream(wanted).max().orElse(1);
    this.known = leastWanted < mostWanted ? new double[0] : known();
  }

  /** Costs of lengths where all places like one length best, each worked out once. */
  private double[] known() {
    int most = (int) Math.min(MOST_KNOWN * mostWanted, 2.0 * cuts.length);
    return IntStream.range(0, most)
        .mapToDouble(frames -> Costs.length(weight, (double) frames, mostWanted))
        .toArray();
  }

  /** How much the length of a shot counts. */
  static double weight(Optional<Length> asked) {
    boolean wish = asked.filter(length -> !length.isRange()).isPresent();
    return wish ? Costs.LENGTH_ASKED : Costs.LENGTH_UNASKED;
  }

  private LongStream reach(long[] ends) {
    return IntStream.range(0, ends.length).mapToLong(i -> ends[i] - cuts[i]);
  }

  private void setLimits(int i, Candidate place) {
    Optional<Long> earliest = place.earliestEnd();
    earliestEnds[i] = earliest.orElse(Math.max(place.cut(), place.anchor()) + 1);
    latestEnds[i] = Costs.IMPOSSIBLE;
    if (lock.isPresent()) {
      earliestEnds[i] = Math.max(earliestEnds[i], lock.get().endExclusive());
      latestEnds[i] = lock.get().endExclusive();
    } else if (asked.isPresent() && !wish) {
      Length range = asked.get();
      long least = lengths.frameAfter(place.cutAt(), range.unit(), range.least());
      earliestEnds[i] = Math.max(earliestEnds[i], least);
      latestEnds[i] = lengths.frameAfter(place.cutAt(), range.unit(), range.most());
    }
    if (earliest.isEmpty() || place.cut() < 0 || place.anchor() < place.cut()) {
      latestEnds[i] = -1;
    }
  }

  private void setRooms(int i, Candidate place) {
    roomyEnds[i] = earliestEnds[i];
    if (latestEnds[i] < 0) {
      return;
    }
    for (RevealRoom room : place.rooms()) {
      for (PhotographRun way : room.ways()) {
        roomyEnds[i] = Math.max(roomyEnds[i], room.endFrame(way));
      }
    }
    roomyCosts[i] = squeezed(place, Long.MAX_VALUE);
  }

  private static long squeezed(Candidate place, long end) {
    long cost = 0;
    for (RevealRoom room : place.rooms()) {
      PhotographRun way = room.fit(place.cut(), end).orElseThrow();
      cost += Costs.squeeze(way, room.ways().get(0));
    }
    return cost;
  }

  int size() {
    return cuts.length;
  }

  Candidate place(int i) {
    return places[i];
  }

  /** Whether some place can only be taken after one start of the panel before. */
  boolean hangs() {
    return hangs;
  }

  long cut(int i) {
    return cuts[i];
  }

  /** The frame of the cue it sits on. */
  long cueFrame(int i) {
    return cueFrames[i];
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

  /** The frames asked for a shot that begins there, where the plan asks for a length. */
  long askedFrames(int i) {
    Length length = asked.orElseThrow();
    return lengths.frameAfter(places[i].cutAt(), length.unit(), length.most()) - cuts[i];
  }

  /** The earliest frame a shot that begins there may end before. */
  long earliestEnd(int i) {
    return earliestEnds[i];
  }

  /** The latest frame a shot that begins there may end before; less than the earliest if none. */
  long latestEnd(int i) {
    return latestEnds[i];
  }

  /** The fewest frames a shot can have, wherever it begins. */
  long leastFrames() {
    return leastFrames;
  }

  /** The most frames a shot can have, wherever it begins. */
  long mostFrames() {
    return mostFrames;
  }

  double leastWanted() {
    return leastWanted;
  }

  double mostWanted() {
    return mostWanted;
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
    return (long) (length(i, end) + 0.5);
  }

  private double length(int i, long end) {
    long frames = end - cuts[i];
    return frames >= 0 && frames < known.length
        ? known[(int) frames]
        : Costs.length(weight, (double) frames, wanted[i]);
  }

  /**
   * What a shot costs at least that begins there: convex in its end, and no less for ends no shot
   * can have.
   */
  double leastCost(int i, long end) {
    double squeeze = roomyCosts.length == 0 ? 0 : roomyCosts[i];
    return length(i, end) + squeeze - ROUNDING;
  }

  /** What a shot of so many frames costs at least, wherever it begins: convex as well. */
  double leastCost(long frames) {
    if (frames >= 0 && frames < known.length) {
      return known[(int) frames] + leastSqueeze - ROUNDING;
    }
    double nearest = Math.max(leastWanted, Math.min(mostWanted, (double) frames));
    return Costs.length(weight, (double) frames, nearest) + leastSqueeze - ROUNDING;
  }

  /** The part of a shot's cost that squeezed reveals make. */
  long squeezeCost(int i, long end) {
    if (roomyCosts.length == 0) {
      return 0;
    }
    return end >= roomyEnds[i] ? roomyCosts[i] : squeezed(places[i], end);
  }
}

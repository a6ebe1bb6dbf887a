package org.barsheet.align;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.Costs;
import org.barsheet.plan.Panel;

/**
 * One panel with a run of places it can take: what its shot costs if it begins at one of them and
 * ends before a frame.
 */
public final class Stage {

  private final int index;
  private final Panel panel;
  private final PlaceCosts costs;
  private final int from;
  private final int size;
  private final SharedCues shared;
  private final List<Set<String>> carried;
  private final long[] carriedUntil;
  private final boolean holdsCues;

  /**
   * A panel with some of its places.
   *
   * @param from the first of the places that counts
   * @param to one more than the last
   */
  Stage(int index, Panel panel, PlaceCosts costs, int from, int to, SharedCues shared) {
    this.index = index;
    this.panel = panel;
    this.costs = costs;
    this.from = from;
    this.size = to - from;
    this.shared = shared;
    boolean holds = shared.tellsApart(index);
    this.carried =
        holds
            ? IntStream.range(0, size).mapToObj(i -> shared.carried(index, place(i))).toList()
            : List.of();
    this.carriedUntil =
        carried.stream().mapToLong(cues -> shared.heldUntil(index + 1, cues)).toArray();
    this.holdsCues = holds && anyHeld();
  }

  private boolean anyHeld() {
    return IntStream.range(0, size)
        .anyMatch(i -> !carried.get(i).isEmpty() || !place(i).held().isEmpty());
  }

  public Panel panel() {
    return panel;
  }

  public int size() {
    return size;
  }

  public Candidate candidate(int i) {
    return place(i).of(panel);
  }

  private Candidate place(int i) {
    return costs.place(from + i);
  }

  public long cut(int i) {
    return costs.cut(from + i);
  }

  /**
   * Whether a place can follow a place of the panel before: it may hang on it, not share its cue.
   */
  boolean canFollow(int i, Stage before, int j) {
    if (costs.hangs() && !hangsOn(place(i), before.cut(j))) {
      return false;
    }
    if (costs.cueFrame(from + i) == before.costs.cueFrame(before.from + j)
        && place(i).cue().id().equals(before.place(j).cue().id())) {
      return false;
    }
    return !(holdsCues || before.holdsCues) || holdsWhatIsLeft(i, before, j);
  }

  private static boolean hangsOn(Candidate here, long cutBefore) {
    return here.afterCut() == Candidate.ANY || here.afterCut() == cutBefore;
  }

  /** Whether no panel before holds its cue, and it is the one told apart by what they hold. */
  private boolean holdsWhatIsLeft(int i, Stage before, int j) {
    Set<String> held = place(i).held();
    if (!before.holdsCues) {
      return held.isEmpty();
    }
    if (before.place(j).held().contains(place(i).cue().id())) {
      return false;
    }
    if (cut(i) >= before.carriedUntil[j]) {
      return held.isEmpty();
    }
    Set<String> left = before.carried.get(j);
    return held.equals(left.size() == 1 ? left : shared.stillHeld(index, cut(i), left));
  }

  /** The cost of choosing a place, whatever comes after. */
  long choiceCost(int i) {
    return place(i).cost();
  }

  /** The earliest frame a shot that begins there may end before. */
  long earliestEnd(int i) {
    return costs.earliestEnd(from + i);
  }

  /** The latest frame a shot that begins there may end before; less than the earliest if none. */
  long latestEnd(int i) {
    return costs.latestEnd(from + i);
  }

  /** The first place whose cut is at or after a frame. */
  int firstFrom(long frame) {
    return Math.max(0, Math.min(size, costs.firstFrom(frame) - from));
  }

  /** The same, if it is known to lie near a place. */
  int firstFrom(long frame, int near) {
    int first = near;
    while (first < size && cut(first) < frame) {
      first++;
    }
    while (first > 0 && cut(first - 1) >= frame) {
      first--;
    }
    return first;
  }

  /** The fewest frames a shot of this panel can have, wherever it begins. */
  long leastFrames() {
    return costs.leastFrames();
  }

  /** The most frames a shot of this panel can have, wherever it begins. */
  long mostFrames() {
    return costs.mostFrames();
  }

  /** The least length a shot may like best, in frames. */
  double leastWanted() {
    return costs.leastWanted();
  }

  /** What a shot of so many frames costs at least, wherever it begins: a convex function. */
  double leastCost(long frames) {
    return costs.leastCost(frames);
  }

  /** What a shot costs at least that begins at a place: a convex function of its end. */
  double leastCost(int i, long end) {
    return costs.leastCost(from + i, end);
  }

  /** The frames asked for a shot that begins there, where the plan asks for a length. */
  long askedFrames(int i) {
    return costs.askedFrames(from + i);
  }

  /** Cost of a shot, length and squeezed reveals, or {@link Costs#IMPOSSIBLE}. */
  long shotCost(int i, long end) {
    return costs.shotCost(from + i, end);
  }

  /** The part of a shot's cost that its length makes. */
  long lengthCost(int i, long end) {
    return costs.lengthCost(from + i, end);
  }

  /** The part of a shot's cost that squeezed reveals make. */
  long squeezeCost(int i, long end) {
    return costs.squeezeCost(from + i, end);
  }
}

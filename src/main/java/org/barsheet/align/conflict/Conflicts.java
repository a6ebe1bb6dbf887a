package org.barsheet.align.conflict;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.barsheet.align.conflict.Conflict.Wish;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.LengthTable;
import org.barsheet.plan.Panel;

/** Finds out which wishes of a plan cannot be kept together. */
public final class Conflicts {

  /** More are not told at once: freeing the first ones often frees the rest. */
  private static final int MOST = 5;

  private final AlignerInput input;
  private final LengthTable lengths;
  private final List<PanelReach> panels;
  private final List<Wish> wishes = new ArrayList<>();

  public Conflicts(AlignerInput input, LengthTable lengths) {
    this.input = input;
    this.lengths = lengths;
    this.panels =
        IntStream.range(0, input.panels().size())
            .mapToObj(p -> new PanelReach(input, p, input.panels().get(p)))
            .toList();
    for (int p = 0; p < panels.size(); p++) {
      for (Wish.Kind kind : Wish.Kind.values()) {
        if (panels.get(p).asks().contains(kind)) {
          wishes.add(new Wish(p, kind));
        }
      }
    }
  }

  /** All wishes of the plan, in story order. */
  public List<Wish> wishes() {
    return List.copyOf(wishes);
  }

  /** How far panels can go if some wishes are kept. */
  public Reach reach(Collection<Wish> kept) {
    return Reach.of(input, lengths, panels, kept);
  }

  /** Whether some wishes can be kept with another panel in the stead of one. */
  boolean isPossibleWith(int index, Panel other, Collection<Wish> kept) {
    List<PanelReach> changed = new ArrayList<>(panels);
    changed.set(index, new PanelReach(input, index, other));
    return Reach.of(input, lengths, changed, kept).isPossible();
  }

  boolean isPossible(Collection<Wish> kept) {
    return reach(kept).isPossible();
  }

  PanelReach panel(int p) {
    return panels.get(p);
  }

  /** Every conflict, none sharing a wish with another; empty if the plan can be kept. */
  public List<Conflict> all() {
    List<Conflict> found = new ArrayList<>();
    List<Wish> open = new ArrayList<>(wishes);
    while (found.size() < MOST && !isPossible(open)) {
      List<Wish> smallest = SmallestConflict.among(List.copyOf(open), this::isPossible);
      found.add(conflict(smallest));
      open.removeAll(smallest);
    }
    return List.copyOf(found);
  }

  private Conflict conflict(List<Wish> smallest) {
    Reach reach = reach(smallest);
    int stuck = reach.firstStuck();
    BitSet ends = stuck == 0 ? new BitSet() : reach.endsOf(stuck - 1);
    if (ends.isEmpty()) {
      return new Conflict(smallest, shortage(reach, Math.max(0, stuck - 1), smallest), true);
    }
    if (stuck == panels.size()) {
      return conflict(smallest, ends, List.of(input.filmFrames()));
    }
    if (panels.get(stuck).hangsOnPanelBefore(kinds(smallest, stuck))) {
      return new Conflict(smallest, 0, true);
    }
    if (panels.get(stuck).isFree(kinds(smallest, stuck))) {
      return conflict(smallest, ends, List.of(input.filmFrames() - 1));
    }
    List<Long> wanted =
        panels.get(stuck).starts(kinds(smallest, stuck)).stream().map(Candidate::cut).toList();
    return conflict(smallest, ends, wanted);
  }

  private static Set<Wish.Kind> kinds(List<Wish> wishes, int panel) {
    return wishes.stream()
        .filter(wish -> wish.panel() == panel)
        .map(Wish::kind)
        .collect(Collectors.toSet());
  }

  /** By how much the frames that can be reached miss the nearest of those that are wanted. */
  private static Conflict conflict(List<Wish> wishes, BitSet ends, List<Long> wanted) {
    long best = Long.MAX_VALUE;
    boolean tooLong = true;
    for (long frame : wanted) {
      int at = (int) Math.max(0, frame);
      int after = ends.nextSetBit(at);
      int before = ends.previousSetBit(at);
      if (after >= 0 && after - frame < best) {
        best = after - frame;
        tooLong = true;
      }
      if (before >= 0 && frame - before < best) {
        best = frame - before;
        tooLong = false;
      }
    }
    return new Conflict(wishes, best == Long.MAX_VALUE ? 0 : best, tooLong);
  }

  private long shortage(Reach reach, int p, List<Wish> smallest) {
    return reach.earliestStartsOf(p).stream()
        .map(start -> panels.get(p).shortage(start, kinds(smallest, p), lengths))
        .flatMap(Optional::stream)
        .min(Long::compare)
        .orElse(0L);
  }
}

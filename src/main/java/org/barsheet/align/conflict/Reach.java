package org.barsheet.align.conflict;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barsheet.align.conflict.Conflict.Wish;
import org.barsheet.align.conflict.Conflict.Wish.Kind;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.LengthTable;
import org.barsheet.clock.FrameSpan;

/**
 * Which frames each panel can begin on at all, whatever it costs, if some of the wishes are kept.
 * Every panel begins after the one before and the last one ends with the film.
 */
public final class Reach {

  private final List<PanelReach> panels;
  private final List<Set<Kind>> kept;
  private final AlignerInput input;
  private final LengthTable lengths;
  private final List<List<Candidate>> starts = new ArrayList<>();
  private final List<BitSet> free = new ArrayList<>();
  private final List<BitSet> ends = new ArrayList<>();
  private int stuck;

  private Reach(
      AlignerInput input, LengthTable lengths, List<PanelReach> panels, Collection<Wish> wishes) {
    this.input = input;
    this.lengths = lengths;
    this.panels = panels;
    this.stuck = panels.size();
    this.kept = new ArrayList<>();
    panels.forEach(panel -> kept.add(EnumSet.noneOf(Kind.class)));
    wishes.forEach(wish -> kept.get(wish.panel()).add(wish.kind()));
  }

  /** Goes from the film's start as far as panels can follow one another. */
  static Reach of(
      AlignerInput input, LengthTable lengths, List<PanelReach> panels, Collection<Wish> wishes) {
    Reach reach = new Reach(input, lengths, panels, wishes);
    for (int p = 0; p < panels.size() && reach.stuck == panels.size(); p++) {
      reach.addStarts(p);
      reach.addEnds(p);
    }
    return reach;
  }

  /** Whether the wishes can be kept together. */
  public boolean isPossible() {
    return stuck == panels.size() && ends.get(panels.size() - 1).get(filmEnd());
  }

  private int filmEnd() {
    return Math.toIntExact(input.filmFrames());
  }

  private void addStarts(int p) {
    starts.add(new ArrayList<>());
    free.add(new BitSet());
    if (p == 0) {
      starts.get(0).addAll(panels.get(0).starts(kept.get(0)));
    } else if (panels.get(p).isFree(kept.get(p))) {
      free.get(p).or(ends.get(p - 1));
      free.get(p).clear(filmEnd());
    } else if (panels.get(p).hangsOnPanelBefore(kept.get(p))) {
      addStartsAfter(p);
    } else {
      for (Candidate start : panels.get(p).starts(kept.get(p))) {
        if (isIn(ends.get(p - 1), start.cut())) {
          starts.get(p).add(start);
        }
      }
    }
  }

  private static boolean isIn(BitSet frames, long frame) {
    return frame >= 0 && frame < frames.length() && frames.get((int) frame);
  }

  private void addStartsAfter(int p) {
    for (Candidate before : startsOf(p - 1)) {
      Optional<FrameSpan> span = panels.get(p - 1).ends(before, kept.get(p - 1), lengths);
      for (Candidate start : panels.get(p).startsAfter(kept.get(p), before)) {
        if (span.isPresent() && span.get().contains(start.cut())) {
          starts.get(p).add(start);
        }
      }
    }
  }

  /** Every start found for a panel, in order of frame. */
  List<Candidate> startsOf(int p) {
    return free.get(p).isEmpty()
        ? starts.get(p)
        : free.get(p).stream().mapToObj(frame -> panels.get(p).freeAt(frame)).toList();
  }

  private void addEnds(int p) {
    BitSet reached = new BitSet();
    ends.add(reached);
    if (starts.get(p).isEmpty() && free.get(p).isEmpty()) {
      stuck = p;
    } else if (!free.get(p).isEmpty()) {
      addFreeEnds(p, reached);
    }
    for (Candidate start : starts.get(p)) {
      Optional<FrameSpan> span = panels.get(p).ends(start, kept.get(p), lengths);
      span.ifPresent(s -> set(reached, s.start(), s.endExclusive() - 1));
    }
  }

  private void addFreeEnds(int p, BitSet reached) {
    BitSet frames = free.get(p);
    if (!kept.get(p).contains(Kind.LENGTH)) {
      set(reached, frames.nextSetBit(0) + 1L, input.filmFrames());
      return;
    }
    long[] least = panels.get(p).endsAfterFrames(lengths, false);
    long[] most = panels.get(p).endsAfterFrames(lengths, true);
    long done = 0;
    for (int frame = frames.nextSetBit(0); frame >= 0; frame = frames.nextSetBit(frame + 1)) {
      set(reached, Math.max(done, Math.max(frame + 1L, least[frame])), most[frame]);
      done = Math.max(done, most[frame] + 1);
    }
  }

  private void set(BitSet frames, long first, long last) {
    long end = Math.min(last, input.filmFrames());
    if (first <= end) {
      frames.set((int) first, (int) end + 1);
    }
  }

  /** The first panel that cannot begin anywhere; the number of panels if only the end is missed. */
  int firstStuck() {
    return stuck;
  }

  /** The frames a panel can end before. */
  BitSet endsOf(int p) {
    return ends.get(p);
  }

  /**
   * One way to keep the wishes, each panel as early as can be, the last one first.
   *
   * @throws IllegalStateException if there is none
   */
  public List<Candidate> onePath() {
    List<Candidate> path = new ArrayList<>();
    long end = input.filmFrames();
    long afterCut = Candidate.ANY;
    for (int p = panels.size() - 1; p >= 0; p--) {
      Candidate start = startBefore(p, end, afterCut);
      path.add(0, start);
      end = start.cut();
      boolean hangs = panels.get(p).hangsOnPanelBefore(kept.get(p));
      afterCut = hangs ? start.afterCut() : Candidate.ANY;
    }
    return path;
  }

  private Candidate startBefore(int p, long end, long cut) {
    if (cut == Candidate.ANY && !free.get(p).isEmpty()) {
      return panels.get(p).freeAt(freeStartBefore(p, end));
    }
    for (Candidate start : startsOf(p)) {
      boolean asked = cut == Candidate.ANY || cut == start.cut();
      Optional<FrameSpan> span = panels.get(p).ends(start, kept.get(p), lengths);
      if (asked && span.isPresent() && span.get().contains(end)) {
        return start;
      }
    }
    throw new IllegalStateException("no way back from frame " + end);
  }

  /** The earliest frame a free panel can begin on to end before a frame. */
  private long freeStartBefore(int p, long end) {
    BitSet frames = free.get(p);
    if (!kept.get(p).contains(Kind.LENGTH)) {
      return frames.nextSetBit(0);
    }
    long[] least = panels.get(p).endsAfterFrames(lengths, false);
    long[] most = panels.get(p).endsAfterFrames(lengths, true);
    for (int frame = frames.nextSetBit(0); frame >= 0; frame = frames.nextSetBit(frame + 1)) {
      if (end > frame && end >= least[frame] && end <= most[frame]) {
        return frame;
      }
    }
    throw new IllegalStateException("no way back from frame " + end);
  }

  /** A start of a panel that can least be missed: its only ones, or the first of a free panel. */
  List<Candidate> earliestStartsOf(int p) {
    return free.get(p).isEmpty()
        ? starts.get(p)
        : List.of(panels.get(p).freeAt(free.get(p).nextSetBit(0)));
  }
}

package org.barsheet.align.conflict;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.barsheet.align.conflict.Conflict.Wish.Kind;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.LengthTable;
import org.barsheet.align.places.PanelCuts;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place.Anywhere;
import org.barsheet.plan.Reveal.OnPlace;

/**
 * What one panel allows, whichever of its wishes are kept: on which frames its shot may begin, and
 * on which it may then end. Unlike the aligner it counts every frame, not only beats.
 */
final class PanelReach {

  private final AlignerInput input;
  private final Panel panel;
  private final boolean first;
  private final Optional<FrameSpan> lock;
  private final PanelCuts cuts;
  private final PanelCuts lockedCuts;
  private final Set<Kind> asks;
  private final Map<Set<Kind>, List<Candidate>> known = new HashMap<>();
  private final Map<Set<Kind>, Map<Long, List<Candidate>>> knownAfter = new HashMap<>();
  private final Map<Long, Candidate> knownFree = new HashMap<>();

  /** The panel at an index of the plan, or one to try in its stead. */
  PanelReach(AlignerInput input, int index, Panel panel) {
    this.input = input;
    this.panel = panel;
    this.first = index == 0;
    this.lock = input.lockOf(panel);
    this.cuts = new PanelCuts(input, index, panel, Optional.empty());
    this.lockedCuts = new PanelCuts(input, index, panel, lock);
    this.asks = whatItAsks();
  }

  private Set<Kind> whatItAsks() {
    EnumSet<Kind> kinds = EnumSet.noneOf(Kind.class);
    if (cuts.asked().isPresent() || !(panel.cue() instanceof Anywhere) || landsOnPlaces()) {
      kinds.add(Kind.PLACE);
    }
    if (panel.length().filter(Length::isRange).isPresent()) {
      kinds.add(Kind.LENGTH);
    }
    if (!panel.reveals().isEmpty()) {
      kinds.add(Kind.REVEALS);
    }
    if (lock.isPresent()) {
      kinds.add(Kind.LOCK);
    }
    return Set.copyOf(kinds);
  }

  private boolean landsOnPlaces() {
    return panel.reveals().stream().anyMatch(reveal -> reveal.landsOn() instanceof OnPlace);
  }

  Panel panel() {
    return panel;
  }

  /** What the panel asks for that can be impossible. */
  Set<Kind> asks() {
    return asks;
  }

  /** The cue asked for, where the plan leaves no choice. */
  Optional<Cue> asked() {
    return cuts.asked();
  }

  Optional<FrameSpan> lock() {
    return lock;
  }

  /** Whether its starts depend on where the panel before begins. */
  boolean hangsOnPanelBefore(Set<Kind> kept) {
    return kept.contains(Kind.PLACE) && !first && cuts.hangsOnPanelBefore();
  }

  /** Whether it may begin on any frame. */
  boolean isFree(Set<Kind> kept) {
    return !first && !kept.contains(Kind.PLACE) && !kept.contains(Kind.LOCK);
  }

  /** A free panel on a frame. */
  Candidate freeAt(long frame) {
    return knownFree.computeIfAbsent(frame, cuts::freeAt);
  }

  /** The starts of a panel that is not free and does not hang on the panel before. */
  List<Candidate> starts(Set<Kind> kept) {
    return known.computeIfAbsent(Set.copyOf(kept), k -> starts(k, List.of()));
  }

  /** The starts of a panel that hangs on the panel before, if that begins on a frame. */
  List<Candidate> startsAfter(Set<Kind> kept, Candidate before) {
    return knownAfter
        .computeIfAbsent(Set.copyOf(kept), k -> new HashMap<>())
        .computeIfAbsent(before.cut(), cut -> starts(kept, List.of(before)));
  }

  private List<Candidate> starts(Set<Kind> kept, List<Candidate> before) {
    if (!kept.contains(Kind.PLACE)) {
      return List.of(cuts.freeAt(first ? 0 : lock.orElseThrow().start()));
    }
    if (kept.contains(Kind.LOCK) || first) {
      return lockedCuts.after(before);
    }
    if (panel.cue() instanceof Anywhere && cuts.asked().isEmpty()) {
      return onAnyFrame();
    }
    List<Candidate> starts = new ArrayList<>();
    for (Candidate wanted : cuts.after(before)) {
      if (!wanted.isLate()) {
        starts.add(wanted);
        starts.addAll(cuts.laterThan(wanted, kept.contains(Kind.REVEALS)));
      }
    }
    return List.copyOf(starts);
  }

  private List<Candidate> onAnyFrame() {
    List<Candidate> starts = new ArrayList<>();
    for (long frame = 1; frame < input.filmFrames(); frame++) {
      starts.add(freeAt(frame));
    }
    return List.copyOf(starts);
  }

  /** The frames its shot may end before; empty if it cannot begin there at all. */
  Optional<FrameSpan> ends(Candidate start, Set<Kind> kept, LengthTable lengths) {
    long least = start.cut() + 1;
    long most = input.filmFrames();
    if (kept.contains(Kind.PLACE)) {
      least = start.anchor() < start.cut() ? Long.MAX_VALUE : start.anchor() + 1;
    }
    if (kept.contains(Kind.LOCK)) {
      least = Math.max(least, lock.orElseThrow().endExclusive());
      most = Math.min(most, lock.orElseThrow().endExclusive());
    }
    if (kept.contains(Kind.LENGTH)) {
      least = Math.max(least, endAfter(start.cutAt(), lengths, false));
      most = Math.min(most, endAfter(start.cutAt(), lengths, true));
    }
    if (kept.contains(Kind.REVEALS) && kept.contains(Kind.PLACE)) {
      for (RevealRoom room : start.rooms()) {
        least = Math.max(least, room.earliestEnd(start.cut()).orElse(Long.MAX_VALUE));
      }
    }
    return least <= most ? Optional.of(new FrameSpan(least, most + 1)) : Optional.empty();
  }

  /** How many frames a start lacks to be one that its shot can end after. */
  Optional<Long> shortage(Candidate start, Set<Kind> kept, LengthTable lengths) {
    if (ends(start, kept, lengths).isPresent()) {
      return Optional.empty();
    }
    long late = start.cut() - start.anchor();
    long least = start.cut() + 1;
    if (kept.contains(Kind.PLACE)) {
      least = Math.max(least, start.anchor() + 1);
    }
    if (kept.contains(Kind.REVEALS)) {
      for (RevealRoom room : start.rooms()) {
        late = Math.max(late, start.cut() - room.latestCut());
        least = Math.max(least, room.earliestEnd(start.cut()).orElse(0L));
      }
    }
    long most = kept.contains(Kind.LOCK) ? lock.orElseThrow().endExclusive() : input.filmFrames();
    if (kept.contains(Kind.LENGTH)) {
      least = Math.max(least, endAfter(start.cutAt(), lengths, false));
      most = Math.min(most, endAfter(start.cutAt(), lengths, true));
    }
    return Optional.of(late > 0 ? late : Math.max(1, least - most));
  }

  /** The frame reached after the least or the most that is asked, from each frame on. */
  long[] endsAfterFrames(LengthTable lengths, boolean most) {
    Length asked = panel.length().orElseThrow();
    return lengths.framesAfter(asked.unit(), most ? asked.most() : asked.least());
  }

  /** The frame reached after the least or the most that is asked. */
  private long endAfter(Seconds from, LengthTable lengths, boolean most) {
    Length asked = panel.length().orElseThrow();
    return lengths.frameAfter(from, asked.unit(), most ? asked.most() : asked.least());
  }
}

package org.barsheet.align.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Reveal;

/**
 * One place a panel can take: the cue it sits on and the frame its shot begins on.
 *
 * @param cue the moment it sits on
 * @param cutAt exact moment its shot begins, from tick 0
 * @param cut film frame its shot begins on
 * @param anchor a frame that has to lie in the shot, at least {@code cut}
 * @param rooms the room each of its reveals needs, in the plan's order
 * @param cost what its choice costs by itself, in millionths
 * @param afterCut the frame the panel before has to begin on, or {@link #ANY}
 * @param kind why it is a candidate
 * @param wantedCut the frame the plan's own cut falls on; earlier than {@code cut} where it gives
 *     way
 * @param held cues that panels before it sit on and that panels after it could take as well
 */
public record Candidate(
    Cue cue,
    Seconds cutAt,
    long cut,
    long anchor,
    List<RevealRoom> rooms,
    long cost,
    long afterCut,
    Kind kind,
    long wantedCut,
    Set<String> held) {

  /** The panel before may begin anywhere. */
  public static final long ANY = -1;

  /** Why a place is a candidate. */
  public enum Kind {
    /** The film's first shot, from frame 0. */
    FIRST,
    /** On the frames of an earlier sheet. */
    LOCKED,
    /** The one place asked. */
    ASKED,
    /** One of several returns of the motif asked. */
    RETURN,
    /** Measured from the start of the panel before. */
    INTO_PANEL,
    /** No place asked: where the panel before has had exactly the length asked. */
    LENGTH_ASKED,
    /** No place asked: where the locked panel before ends. */
    AFTER_LOCK,
    /** No place asked: on a mark. */
    FREE_ON_MARK,
    /** No place asked: on a bar line. */
    FREE_ON_BAR,
    /** No place asked: on another beat. */
    FREE_ON_BEAT,
    /** No place asked: off the beat. */
    FREE_OFF_BEAT;

    public boolean isFree() {
      return this == FREE_ON_MARK
          || this == FREE_ON_BAR
          || this == FREE_ON_BEAT
          || this == FREE_OFF_BEAT;
    }
  }

  public Candidate {
    rooms = List.copyOf(rooms);
  }

  /** The same with other cues held. */
  public Candidate holding(Set<String> cues) {
    return cues.equals(held)
        ? this
        : new Candidate(cue, cutAt, cut, anchor, rooms, cost, afterCut, kind, wantedCut, cues);
  }

  /** The same for a panel whose reveals need as much. */
  public Candidate of(Panel panel) {
    if (rooms.isEmpty()) {
      return this;
    }
    List<RevealRoom> own = new ArrayList<>();
    for (Reveal reveal : panel.reveals()) {
      own.add(rooms.get(own.size()).of(reveal));
    }
    return new Candidate(cue, cutAt, cut, anchor, own, cost, afterCut, kind, wantedCut, held);
  }

  /**
   * The earliest frame its shot may end before, whatever is asked of its length: after its anchor,
   * with every reveal shown; empty if a reveal finds no room.
   */
  public Optional<Long> earliestEnd() {
    long end = Math.max(cut, anchor) + 1;
    for (RevealRoom room : rooms) {
      Optional<Long> shown = room.earliestEnd(cut);
      if (shown.isEmpty()) {
        return Optional.empty();
      }
      end = Math.max(end, shown.get());
    }
    return Optional.of(end);
  }

  public boolean isLate() {
    return cut > wantedCut;
  }
}

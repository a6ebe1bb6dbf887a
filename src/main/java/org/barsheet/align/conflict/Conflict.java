package org.barsheet.align.conflict;

import java.util.List;

/**
 * Wishes that cannot be kept together, though any of them could be without the others.
 *
 * @param wishes in story order, at least one
 * @param frames by how many frames they miss; 0 where that cannot be said in frames
 * @param tooLong whether frames are missing, or else left over
 */
public record Conflict(List<Wish> wishes, long frames, boolean tooLong) {

  public Conflict {
    wishes = List.copyOf(wishes);
  }

  /** The panels concerned, in story order. */
  List<Integer> panels() {
    return wishes.stream().map(Wish::panel).distinct().toList();
  }

  boolean has(int panel, Wish.Kind kind) {
    return wishes.contains(new Wish(panel, kind));
  }

  /**
   * One hard thing a plan asks for.
   *
   * @param panel index of the panel that asks, from 0
   * @param kind what it asks
   */
  record Wish(int panel, Kind kind) {

    /** What can be asked of a panel. */
    enum Kind {
      /** To sit where the plan says. */
      PLACE,
      /** To be no shorter and no longer than a range. */
      LENGTH,
      /** Room for its reveals. */
      REVEALS,
      /** To keep the frames of an earlier sheet. */
      LOCK
    }
  }
}

package org.barsheet.motif;

import java.util.Arrays;

/** The states of a chain search, each the cheapest way to one note, in growing columns. */
final class ChainStates {

  /** No state: the chain begins here. */
  static final int NONE = -1;

  private int[] notes = new int[256];
  private int[] costs = new int[256];
  private int[] endCosts = new int[256];
  private int[] origins = new int[256];
  private int[] levels = new int[256];
  private int size;

  void clear() {
    size = 0;
  }

  int size() {
    return size;
  }

  int note(int state) {
    return notes[state];
  }

  int cost(int state) {
    return costs[state];
  }

  /** The cost if the chain ends here: how long the note is held does not count then. */
  int endCost(int state) {
    return endCosts[state];
  }

  /**
   * Adds a state.
   *
   * @param note note of the field
   * @param endCost of the way so far, in thousandths, but for how long the note is held
   * @param lengthCost of how long the note is held
   * @param from the state before, {@link #NONE} at the beginning
   * @param level note of the pattern
   */
  void add(int note, int endCost, int lengthCost, int from, int level) {
    if (size == notes.length) {
      int more = 2 * size;
      notes = Arrays.copyOf(notes, more);
      costs = Arrays.copyOf(costs, more);
      endCosts = Arrays.copyOf(endCosts, more);
      origins = Arrays.copyOf(origins, more);
      levels = Arrays.copyOf(levels, more);
    }
    notes[size] = note;
    costs[size] = endCost + lengthCost;
    endCosts[size] = endCost;
    origins[size] = from;
    levels[size] = level;
    size++;
  }

  /** The way to a state, for a pattern of so many notes. */
  Picks trace(int state, int patternSize) {
    int[] picks = new int[patternSize];
    Arrays.fill(picks, Picks.NONE);
    for (int at = state; at != NONE; at = origins[at]) {
      picks[levels[at]] = notes[at];
    }
    return new Picks(picks);
  }
}

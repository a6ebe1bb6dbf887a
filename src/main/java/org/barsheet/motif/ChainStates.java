package org.barsheet.motif;

import java.util.Arrays;

/** The states of a chain search, each the cheapest way to one note, in growing columns. */
final class ChainStates {

  /** No state: the chain begins here. */
  static final int NONE = -1;

  private int[] notes = new int[256];
  private int[] costs = new int[256];
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

  /**
   * Adds a state.
   *
   * @param note note of the field
   * @param cost of the way so far, in thousandths
   * @param from the state before, {@link #NONE} at the beginning
   * @param level note of the pattern
   */
  void add(int note, int cost, int from, int level) {
    if (size == notes.length) {
      int more = 2 * size;
      notes = Arrays.copyOf(notes, more);
      costs = Arrays.copyOf(costs, more);
      origins = Arrays.copyOf(origins, more);
      levels = Arrays.copyOf(levels, more);
    }
    notes[size] = note;
    costs[size] = cost;
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

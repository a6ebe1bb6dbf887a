package org.barsheet.motif.match;

import java.util.Arrays;

/**
 * The states of a chain search, each the cheapest way to one note, in growing columns; those of one
 * level and pitch are linked, so that a search looks only at pitches near enough.
 */
final class ChainStates {

  /** No state: the chain begins here. */
  static final int NONE = -1;

  private static final int PITCHES = 128;

  private int[] notes = new int[256];
  private int[] costs = new int[256];
  private int[] endCosts = new int[256];
  private int[] origins = new int[256];
  private int[] slots = new int[256];
  private int[] older = new int[256];
  private int size;

  /** The newest state of each level and pitch. */
  private final int[] newest;

  ChainStates(int patternSize) {
    newest = new int[patternSize * PITCHES];
    Arrays.fill(newest, NONE);
  }

  void clear() {
    for (int state = 0; state < size; state++) {
      newest[slots[state]] = NONE;
    }
    size = 0;
  }

  /** The newest state of a level at a pitch, or {@link #NONE}. */
  int newest(int level, int pitch) {
    return newest[level * PITCHES + pitch];
  }

  /** The state before one at its level and pitch, or {@link #NONE}. */
  int older(int state) {
    return older[state];
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
   * @param pitch of the note
   */
  void add(int note, int endCost, int lengthCost, int from, int level, int pitch) {
    if (size == notes.length) {
      int more = 2 * size;
      notes = Arrays.copyOf(notes, more);
      costs = Arrays.copyOf(costs, more);
      endCosts = Arrays.copyOf(endCosts, more);
      origins = Arrays.copyOf(origins, more);
      slots = Arrays.copyOf(slots, more);
      older = Arrays.copyOf(older, more);
    }
    notes[size] = note;
    costs[size] = endCost + lengthCost;
    endCosts[size] = endCost;
    origins[size] = from;
    int slot = level * PITCHES + pitch;
    slots[size] = slot;
    older[size] = newest[slot];
    newest[slot] = size;
    size++;
  }

  /** The way to a state, for a pattern of so many notes. */
  Picks trace(int state, int patternSize) {
    int[] picks = new int[patternSize];
    Arrays.fill(picks, Picks.NONE);
    for (int at = state; at != NONE; at = origins[at]) {
      picks[slots[at] / PITCHES] = notes[at];
    }
    return new Picks(picks);
  }
}

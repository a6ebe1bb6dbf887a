package org.barsheet.motif.match;

import java.util.Arrays;

/** Which chains hold which notes of the field, for telling how much chains have in common. */
public final class KeptNotes {

  private static final int NONE = -1;

  /** For each note of the field its newest entry; each entry names a chain and an older entry. */
  private final int[] newest;

  private int[] chains = new int[256];
  private int[] older = new int[256];
  private int entries;

  /** For each chain how many notes the chain looked at shares with it; 0 between two looks. */
  private int[] shared = new int[64];

  private int size;

  public KeptNotes(int fieldSize) {
    newest = new int[fieldSize];
    Arrays.fill(newest, NONE);
  }

  /** Adds a chain. */
  public void add(Picks picks) {
    for (int i = 0; i < picks.size(); i++) {
      if (picks.has(i)) {
        add(picks.get(i));
      }
    }
    size++;
    shared = size == shared.length ? Arrays.copyOf(shared, 2 * size) : shared;
  }

  private void add(int note) {
    if (entries == chains.length) {
      chains = Arrays.copyOf(chains, 2 * entries);
      older = Arrays.copyOf(older, 2 * entries);
    }
    chains[entries] = size;
    older[entries] = newest[note];
    newest[note] = entries++;
  }

  /** The most notes that one of the added chains has in common with this one. */
  public int mostShared(Picks picks) {
    int most = 0;
    for (int i = 0; i < picks.size(); i++) {
      for (int at = first(picks, i); at != NONE; at = older[at]) {
        most = Math.max(most, ++shared[chains[at]]);
      }
    }
    for (int i = 0; i < picks.size(); i++) {
      for (int at = first(picks, i); at != NONE; at = older[at]) {
        shared[chains[at]] = 0;
      }
    }
    return most;
  }

  private int first(Picks picks, int i) {
    return picks.has(i) ? newest[picks.get(i)] : NONE;
  }
}

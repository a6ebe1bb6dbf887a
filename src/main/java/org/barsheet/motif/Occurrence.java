package org.barsheet.motif;

import java.util.List;

/**
 * One return of a motif; doublings in other parts and octaves are the same return.
 *
 * @param motif the motif's name
 * @param number 1 for the first certain or likely return in time order, 2 for the second …; 0 for a
 *     possible one, which is not counted
 * @param notes where it sounds
 * @param parts indexes of the parts that play it, the leading one first; at least one
 * @param variation how it differs from the motif
 * @param score 0 to 1, 1 for the motif note for note
 * @param certainty how much to rely on it
 */
public record Occurrence(
    String motif,
    int number,
    SoundedNotes notes,
    List<Integer> parts,
    Variation variation,
    double score,
    Certainty certainty) {

  public Occurrence {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("no part plays this return of " + motif);
    }
  }

  /** Onset of its first note. */
  public long startTick() {
    return notes.startTick();
  }
}

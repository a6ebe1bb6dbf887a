package org.barsheet.motif;

import java.util.List;

/**
 * One return of a motif; doublings in other parts and octaves are the same return.
 *
 * @param motif the motif's name
 * @param number 1 for the first certain or likely return in time order, 2 for the second …; 0 for a
 *     possible one, which is not counted
 * @param startTick onset of its first note
 * @param endTick end of its last note
 * @param accentTick onset of the accented note
 * @param noteTicks onset of each note of the motif in it, in order of time; a missing note stands
 *     where it would sound; a shortened return has the notes of its head only
 * @param pitches the sounding pitch of each note of the motif, −1 where it is missing
 * @param parts indexes of the parts that play it, the leading one first; at least one
 * @param forms every way it is changed, in the order a musician would say it; never empty
 * @param transposition semitones from the motif to this return, of most of its notes
 * @param score 0 to 1, 1 for the motif note for note
 * @param certainty how much to rely on it
 * @param description form in words: "tonal, up a fifth, last note shortened"
 */
public record Occurrence(
    String motif,
    int number,
    long startTick,
    long endTick,
    long accentTick,
    List<Long> noteTicks,
    List<Integer> pitches,
    List<Integer> parts,
    List<Form> forms,
    int transposition,
    double score,
    Certainty certainty,
    String description) {

  public Occurrence {
    noteTicks = List.copyOf(noteTicks);
    pitches = List.copyOf(pitches);
    parts = List.copyOf(parts);
    forms = List.copyOf(forms);
    if (parts.isEmpty() || forms.isEmpty() || noteTicks.size() != pitches.size()) {
      throw new IllegalArgumentException(
          "an occurrence of " + motif + " lacks parts, forms or notes");
    }
  }
}

package org.barsheet.motif;

import java.util.List;

/**
 * The notes of a return, in ticks of the score.
 *
 * @param ticks onset of each note of the motif in it, in order of time; a missing note stands where
 *     it would sound; a shortened return has the notes of its head only; at least one
 * @param pitches the sounding pitch of each note of the motif, −1 where it is missing
 * @param accentTick onset of the accented note
 * @param endTick end of its last note
 * @param meantStart where its first note is meant, though it is played a little early or late: for
 *     naming its place, never for its time
 * @param meantAccent the same of the accented note
 */
public record SoundedNotes(
    List<Long> ticks,
    List<Integer> pitches,
    long accentTick,
    long endTick,
    long meantStart,
    long meantAccent) {

  public SoundedNotes {
    ticks = List.copyOf(ticks);
    pitches = List.copyOf(pitches);
    if (ticks.isEmpty() || ticks.size() != pitches.size()) {
      throw new IllegalArgumentException("a return has a pitch, or none, for each of its notes");
    }
  }

  /** Notes played where they are meant. */
  public SoundedNotes(List<Long> ticks, List<Integer> pitches, long accentTick, long endTick) {
    this(ticks, pitches, accentTick, endTick, ticks.get(0), accentTick);
  }

  /** Onset of its first note. */
  public long startTick() {
    return ticks.get(0);
  }
}

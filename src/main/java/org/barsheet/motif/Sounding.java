package org.barsheet.motif;

/**
 * Where a return sounds, and no more: what counting returns needs.
 *
 * @param startTick onset of its first note
 * @param endTick end of its last note
 * @param part index of the part that leads
 * @param certainty how much to rely on it
 */
public record Sounding(long startTick, long endTick, int part, Certainty certainty) {

  public long length() {
    return endTick - startTick;
  }

  /** How many ticks two returns sound together; less than 0 with silence between. */
  public long shared(Sounding other) {
    return Math.min(endTick, other.endTick) - Math.max(startTick, other.startTick);
  }
}

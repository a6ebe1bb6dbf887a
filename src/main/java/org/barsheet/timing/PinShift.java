package org.barsheet.timing;

import org.barsheet.cues.Cue;

/**
 * What pins did to a cue.
 *
 * @param cue the cue
 * @param writtenFrame film frame it would stand on by the written tempo
 */
public record PinShift(Cue cue, long writtenFrame) {

  /** How many frames later the cue stands for the pins; negative if earlier. */
  public long frames() {
    return cue.frame() - writtenFrame;
  }
}

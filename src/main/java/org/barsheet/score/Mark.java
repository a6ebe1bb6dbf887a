package org.barsheet.score;

/**
 * A marker (FF 06) or cue point (FF 07) of the file.
 *
 * @param kind which of the two
 * @param tick where it stands
 * @param text what it says, control characters taken out
 */
public record Mark(Kind kind, long tick, String text) {

  /** The two text events of the Standard MIDI File that name a moment. */
  public enum Kind {
    MARKER,
    CUE_POINT
  }
}

package org.barsheet.pulse;

/**
 * One way to hear the beats and bars of a score.
 *
 * @param kind how it differs from the one that is followed
 * @param beatsLater how many beats later its bars begin; 0 unless that is the difference
 * @param request what asks for it
 * @param music the score heard so
 */
public record Reading(Kind kind, int beatsLater, TempoRequest request, Music music) {

  /** How a reading differs from the one that is followed. */
  public enum Kind {
    /** It is the one that is followed. */
    FOLLOWED,
    /** Its beat is twice as long. */
    HALF_AS_FAST,
    /** Its beat is half as long. */
    TWICE_AS_FAST,
    /** Its bars begin later, on another beat. */
    LATER,
    /** It keeps to the written tempo and bars. */
    AS_WRITTEN,
    /** Its beats and bars are found in the playing. */
    AS_PLAYED
  }
}

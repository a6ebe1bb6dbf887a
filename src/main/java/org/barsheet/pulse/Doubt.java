package org.barsheet.pulse;

import org.barsheet.score.Bar;

/**
 * Something about tempo and bars that a person should look at.
 *
 * @param kind what sort of doubt
 * @param from first bar it concerns
 * @param to last bar it concerns
 * @param sentence what is doubtful and what was done, without a closing full stop
 */
public record Doubt(Kind kind, Bar from, Bar to, String sentence) {

  /** Sorts of doubt. */
  public enum Kind {
    /** The written tempo looks untrue. */
    UNTRUE_TEMPO,
    /** Some bars do not keep to the written beats. */
    PARTLY_UNTRUE,
    /** Pins put the music's start before the recording's. */
    BEFORE_RECORDING,
    /** A pin contradicts its neighbors. */
    PIN_AT_ODDS,
    /** Bars and beats were found in the playing and not read. */
    FOUND_BARS,
    /** The beat might as well be twice or half as fast. */
    BEAT_LEVEL,
    /** The bar might as well begin on another beat. */
    BAR_PHASE,
    /** The bars might as well have another number of beats. */
    BAR_SIZE,
    /** Whether the piece begins with a pickup is guessed. */
    PICKUP
  }
}

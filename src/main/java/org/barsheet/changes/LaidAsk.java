package org.barsheet.changes;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A place a plan asked for, and the music it meant.
 *
 * @param kind what asked for it
 * @param panel name of the panel it belongs to, or ""
 * @param of which of its kind: the opening of a reveal, the motif that is heard there, the time of
 *     a pin; else ""
 * @param words the place in the plan's words
 * @param firm whether the words mean one moment of the music, and not a time or any return
 * @param held why it must not move any more: {@code locked}, {@code photographed}; else ""
 * @param quarters where it lies, in quarter notes from tick 0; nothing where there is no such place
 * @param cue id of the cue it is, or ""
 */
public record LaidAsk(
    Kind kind,
    String panel,
    String of,
    String words,
    boolean firm,
    String held,
    Optional<BigFraction> quarters,
    String cue) {

  /** What asks for places. */
  public enum Kind {
    MOTIF,
    PIN,
    CUE,
    CUT,
    REVEAL
  }

  /** Whether the same thing asks for the same place in the same words. */
  boolean isSame(LaidAsk other) {
    return kind == other.kind
        && panel.equals(other.panel)
        && of.equals(other.of)
        && words.equals(other.words);
  }
}

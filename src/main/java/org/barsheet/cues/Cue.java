package org.barsheet.cues;

import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.clock.Seconds;
import org.barsheet.motif.Form;
import org.barsheet.motif.Occurrence;
import org.barsheet.score.BarBeat;

/**
 * A moment in the music that a panel can sit on.
 *
 * @param id permanent name within the film: {@code glimmer-3}, {@code bar-12}, {@code mark-A}
 * @param kind what it is
 * @param name motif or mark it is of, {@code before the music} for a moment that lies there, or ""
 * @param number which return of the motif, from 1; 0 for a possible one and where it is no motif
 * @param at its first moment, from tick 0 of the score
 * @param frame film frame of that moment
 * @param place that moment in bars
 * @param accentAt the moment a photograph lands on, from tick 0; {@code at} unless the motif's
 *     accent is another note
 * @param accentFrame film frame of the accent, without lead
 * @param accentPlace the accent in bars
 * @param occurrence the return, for a cue of a motif
 */
public record Cue(
    String id,
    Kind kind,
    String name,
    int number,
    Seconds at,
    long frame,
    BarBeat place,
    Seconds accentAt,
    long accentFrame,
    BarBeat accentPlace,
    Optional<Occurrence> occurrence) {

  /** What a cue is. */
  public enum Kind {
    RETURN,
    MARK,
    BAR,
    TIMECODE,
    INTO_PANEL,
    /** A place the aligner found for a panel that asked for none. */
    FREE
  }

  /** What a moment before the music is called: it lies in no bar. */
  static final String BEFORE_MUSIC = "before the music";

  /** Whether it lies before the music's start; its place in bars is then that start. */
  public boolean isBeforeMusic() {
    return occurrence.isEmpty() && kind != Kind.MARK && name.equals(BEFORE_MUSIC);
  }

  /** Whether a photograph lands on another frame than that of the first moment. */
  public boolean hasAccentElsewhere() {
    return accentFrame != frame;
  }

  /** How a return is changed against its motif: {@code inverted, augmented}; "" for all others. */
  public String formWords() {
    return occurrence.stream()
        .flatMap(found -> found.variation().forms().stream())
        .map(Form::word)
        .collect(Collectors.joining(", "));
  }

  /** As people say it: {@code glimmer 3}, {@code mark A}, {@code bar 12 beat 2}. */
  public String title() {
    return switch (kind) {
      case RETURN -> number > 0 ? name + " " + number : name + " (possible)";
      case MARK -> "mark " + name;
      default -> isBeforeMusic() ? BEFORE_MUSIC : place.toString();
    };
  }
}

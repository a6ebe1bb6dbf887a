package org.barsheet.timing;

import java.util.List;

/**
 * What there is to say of a film's tempo.
 *
 * @param sections the music in sections, in order
 * @param pins bars pinned to a recording, in order; none where the film follows the score alone
 * @param shifts what the pins did to each cue, in order of time
 */
public record TempoReport(List<TempoSection> sections, List<FilmPin> pins, List<PinShift> shifts) {

  /** Nothing to say. */
  public static final TempoReport EMPTY = new TempoReport(List.of(), List.of(), List.of());

  public TempoReport {
    sections = List.copyOf(sections);
    pins = List.copyOf(pins);
    shifts = List.copyOf(shifts);
  }
}

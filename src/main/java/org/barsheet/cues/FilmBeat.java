package org.barsheet.cues;

import org.barsheet.clock.Seconds;
import org.barsheet.score.BarBeat;

/**
 * A felt beat with its place in the film.
 *
 * @param at its exact time from tick 0 of the score
 * @param frame film frame nearest to it
 * @param place the same in bars
 */
public record FilmBeat(Seconds at, long frame, BarBeat place) {}

package org.barsheet.cues;

import java.math.BigDecimal;
import org.barsheet.clock.FramesPerBeat;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;

/**
 * A bar with its place in the film.
 *
 * @param bar the bar
 * @param start from tick 0 of the score
 * @param length how long it lasts
 * @param drift how much later it begins than it would at the constant tempo that takes its section
 *     (the bars between two marks, or of one meter) as long; negative if earlier
 * @param startFrame film frame it begins on
 * @param lengthFrames to the first frame of the next bar
 * @param framesPerBeat felt beat at its start, in frames and eighths
 * @param beatsPerMinute felt bpm at its start, to three decimals
 */
public record FilmBar(
    Bar bar,
    Seconds start,
    Seconds length,
    Seconds drift,
    long startFrame,
    long lengthFrames,
    FramesPerBeat framesPerBeat,
    BigDecimal beatsPerMinute) {}

package org.barsheet.timing;

import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmBar;

/**
 * A bar pinned to a time of the recording, and what became of it.
 *
 * @param bar the bar
 * @param asked seconds from the recording's first sample
 * @param residual how much later the bar begins than asked, exactly; negative if earlier
 * @param frame film frame it begins on
 * @param frameResidual how much later that frame begins than was asked
 */
public record FilmPin(
    FilmBar bar, Seconds asked, Seconds residual, long frame, Seconds frameResidual) {}

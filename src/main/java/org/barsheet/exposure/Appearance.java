package org.barsheet.exposure;

import org.barsheet.clock.FrameSpan;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;

/**
 * One performer seen in one opening in one shot.
 *
 * @param shot index of the shot
 * @param performer who
 * @param opening where
 * @param frames from the first gap (or the shot's start, if it stands open) to the shot's end
 * @param sounding share of those frames in which their part sounds, 0 to 1
 */
public record Appearance(
    int shot, Performer performer, Opening opening, FrameSpan frames, double sounding) {}

package org.barsheet.exposure;

/**
 * How far an opening stands open in a shot.
 *
 * @param opening its name
 * @param shot index of the shot
 * @param atFirstFrame 0 closed to 1 fully open, on the shot's first frame
 * @param atLastFrame the same on its last
 */
public record OpeningState(String opening, int shot, double atFirstFrame, double atLastFrame) {}

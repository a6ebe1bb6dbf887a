package org.barsheet.plan;

/**
 * How many frames a reveal takes, seen from the frame it lands on.
 *
 * @param before frames from its first moved photograph to the landing frame, 0 or more
 * @param from frames from the landing frame to the end of its last photograph's exposure, 1 or more
 */
public record RevealSpan(long before, long from) {}

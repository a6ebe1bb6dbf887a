package org.barsheet.motif.match;

/**
 * A chain found in free playing.
 *
 * @param chain with a pattern bent to what was played
 * @param asked the pattern before it was bent
 * @param rate seconds a quarter note of the motif lasted in it
 */
public record PlayedChain(Chain chain, Pattern asked, double rate) {}

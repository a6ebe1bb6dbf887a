package org.barsheet.movie;

import org.barsheet.clock.FrameSpan;

/**
 * What is asked of a movie.
 *
 * @param frames of the film; those before frame 0 show the head
 * @param width of the frame in pixels
 * @param strip whether words stand below the image
 */
public record MovieOrder(FrameSpan frames, int width, boolean strip) {}

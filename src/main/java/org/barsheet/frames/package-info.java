/**
 * What is seen of a film on each frame, from back to front; entry class {@link
 * org.barsheet.frames.FilmFrames}. Page, movie and the editor's tables all show it.
 */
@NullMarked
package org.barsheet.frames;

import org.jspecify.annotations.NullMarked;

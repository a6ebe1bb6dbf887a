/**
 * The film as it stands as a movie; entry class {@link org.barsheet.movie.Movie}. Frames are drawn
 * here and handed to ffmpeg one by one.
 */
@NullMarked
package org.barsheet.movie;

import org.jspecify.annotations.NullMarked;

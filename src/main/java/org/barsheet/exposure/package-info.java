/** Pictures of a reveal, frame by frame; entry class {@link org.barsheet.exposure.FilmSheet}. */
@NullMarked
package org.barsheet.exposure;

import org.jspecify.annotations.NullMarked;

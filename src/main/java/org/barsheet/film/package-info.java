/** The one result everything is printed from; entry class {@link org.barsheet.film.FilmSheet}. */
@NullMarked
package org.barsheet.film;

import org.jspecify.annotations.NullMarked;
